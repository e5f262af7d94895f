title = Policy limit made less safe
protects = People who rely on the plan expect the usual limit and do not see that it was loosened.

# $policy (name)
# $limit (phrase)
# $value (text)
# $shipped (text)
# $reason (name)
with-reason = Policy { $policy } sets { $limit } to { $value }, less safe than { $shipped }. Reason: { $reason }

# $policy (name)
# $limit (phrase)
# $value (text)
# $shipped (text)
no-reason = Policy { $policy } sets { $limit } to { $value }, less safe than { $shipped }. Reason not stated. Write it after `because`.

# $value (quantity)
number = { $value }

shipped-value = the value that it replaces

replaced-here = This limit is replaced.
