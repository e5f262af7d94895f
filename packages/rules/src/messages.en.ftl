### prefix: rule

# $rule (name)
# $protects (message)
could-not-run =
    The check { $rule } could not run on this plan. What it protects against was not checked: { $protects }

# What a rule is about: headings of the list of rules.
family-timber-and-cribs = Timber and cribs
family-struts-and-ties = Struts and ties
family-whole-system = Stabilization system
family-order-and-crew = Order and crew
family-stock = Equipment
family-plausibility = Data in the plan
family-policy-and-review = Policy and review
