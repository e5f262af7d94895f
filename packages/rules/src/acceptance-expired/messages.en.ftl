title = Acceptance expired
protects = An acceptance with an end date is not valid after that date.

# $by (name)
# $rule (name)
# $on (phrase)
# $until (name) - a date
expired = { $by } accepted { $rule } on { $on } until { $until }. That date has passed. Fix the problem, or accept it again.

# $by (name)
# $rule (name)
# $on (phrase)
# $until (name) - a date
no-day = Today's date not known. The acceptance of { $rule } on { $on } by { $by } until { $until } does not count. This check has not passed.

# $until (name)
bad-date = The date { $until } cannot be read. Write it as year-month-day: 2027-03-01.

# $by (name)
# $rule (name)
# $on (phrase)
no-finding = { $by } accepted { $rule } on { $on }, but { $rule } reports nothing there. Delete this line.
