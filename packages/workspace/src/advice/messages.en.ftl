### What a change that was tried does.
### prefix: advice

# $label (phrase)
# $before (quantity)
# $after (quantity)
effect = { $label }: { $before } to { $after }

# $rule (name)
# $on (text)
rule-on = { $rule } on { $on }

# $before (count)
# $after (count)
unsafe = unsafe or not checked: { $before } → { $after }
