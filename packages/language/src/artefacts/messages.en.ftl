### The reference page of the plan language.
### prefix: reference

title = The plan language, line by line
how-to-read = Read each drawing from left to right, along the line. Rounded boxes are words to write. Square boxes are what to fill in. Where the line splits, take either way. Where it runs back, you may repeat that part.
file = A file holds `use "file.crib"` lines, `let` lines and blocks. A statement ends at the end of its line or at `;`. A line that ends in a comma continues on the next line. `//` starts a comment; `/*` and `*/` enclose one.
# $blocks (list)
blocks = Blocks: { $blocks }.
# $blocks (list)
blocks-inside = Blocks inside: { $blocks }.
# $block (name)
lines-of = The lines of { $block }
let-and-patterns = let and patterns
# $places (list)
goes = Goes { $places }.
at-the-top = at the top of a file
# $block (name)
in-block = in `{ $block }`
required = required
repeatable = may be repeated
numbered-lines = numbered lines
number = number
# $quantity (phrase)
or-a-range = { $quantity } or a range
part = part
# $what (message)
name-of = name of the { $what }
date = date
size = size
name-of-a-check = name of a check
calculation = calculation
name-is-value = (name = value, …)
value = value
