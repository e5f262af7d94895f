### prefix: rule

# $rule (name)
# $protects (message)
could-not-run =
    The check { $rule } could not run on this plan. What it protects against was not checked: { $protects }
