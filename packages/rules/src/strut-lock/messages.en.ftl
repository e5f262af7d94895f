title = Strut without a mechanical lock
protects = A strut held only by oil or air comes down when a seal or a hose fails.

# $strut (name)
no-lock = Strut { $strut }: lock not stated. Pin it, or set its lock collar, before anyone relies on it.

# $strut (name)
pump-only = Strut { $strut } is held by its pump alone. A leak lets it down. Pin it, or set its lock collar.


# $strut (name)
fix-pin = Pin strut { $strut }
