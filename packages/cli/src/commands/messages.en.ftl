### The help of the command line, and what is wrong with a command line.
### prefix: command

usage = Usage:
arguments = Arguments:
options = Options:
commands = Commands:
options-wanted = options
command-wanted = command
path-wanted = path
file-wanted = file
format-wanted = format
title-wanted = title
view-wanted = view
name-wanted = name
number-wanted = number
loss-wanted = name
theme-wanted = theme
rule-wanted = rule
language-wanted = language
units-wanted = units
# $choices (list)
choices = choices: { $choices }
# $value (name)
default = default: { $value }
version = print the version
help = print this help
help-of = print the help of a command
language = language of what is printed
units = US or SI units; plan: the units that each plan asks for
paths = files or folders
plan-file = the plan file
lesson-file = the file with the lesson
output = where to write it; without this option, the standard output
plan = title of the plan, where the file has more than one

check-summary = report what is unsafe in the plans, and why
check =
    Reads plan files, or every .crib file in a folder, and reports what is unsafe, with the calculation and what would make it right. The path - reads a plan from the standard input.

    Exit code: 0 when nothing unsafe was found; 1 when something unsafe was found; 2 when a file could not be read, there was no plan, the output could not be written, or a check could not run.
format = how to print the report

test-summary = compare each plan with its expect lines
test =
    Checks the plans and compares what was found with their expect lines. A danger that no expect line names counts as not expected.

    Exit code: 0 when everything came out as expected; 1 when it did not; 2 when a file could not be read or a check could not run.
quiet = do not print the findings

draw-summary = draw a plan as SVG
draw =
    Draws one view of a plan, as the drawing in the editor shows it. With --every, draws all views of all plans in the file, into the folder that -o names.

    Exit code: 0; or 2 when the file, or a file that its plans use, could not be read in full. The drawing of such a plan says so.
view = top, side, end, crib, strut, "side push", utilization, timeline, ground, 3d …
subject = the crib or strut of a close-up
stage = how far it is built: 0 is as found
lost = the support, tie or part that has failed
theme = light, dark, high-contrast or high-contrast-light
every = all views of all plans

sheet-summary = write the field sheet of a plan: one page to print
sheet =
    Writes the page that a crew carries, as a web page that needs no other file. Print it from any browser.

    Exit code: 0; or 2 when the file, or a file that its plans use, could not be read in full. The page of such a plan says so.
calculations = with the calculations: loads as built, and when a vehicle underneath fails

materials-summary = list what each plan needs, what the responding caches carry, and what is short
materials =
    Lists what each plan needs, what the responding caches carry, and what is short.

    Exit code: 0 when nothing is short; 1 when something is short; 2 when a file, or a file that a plan uses, could not be read in full: part of what is needed may then be missing from the list.

lesson-summary = write the handout of a lesson, or its answer key
lesson =
    Writes a lesson as a web page to print. With --key, writes the instructor's copy: each answer with its calculation from the plan.

    Exit code: 0; or 2 when an exercise has no answer key, or when part of what the lesson uses could not be read: the page then says so.
key = with the answers

explain-summary = print the page of a rule: what it protects against, its calculation, its sources
explain = Prints the page of a rule. Without a rule, lists all rules.
rule = the id printed beside a finding, such as crib-height

see-help = For help, run: cribwright --help
# $word (name)
unknown-command = There is no command “{ $word }”.
# $word (name)
unknown-option = There is no option { $word } here.
# $word (name)
missing-argument = The command is not complete. Add: { $word }.
# $word (name)
missing-value = The option { $word } needs a value.
# $option (name)
# $value (name)
# $values (list)
unknown-value = “{ $value }” is not a value of { $option }. Use one of: { $values }.
too-many = The command has more arguments than it can take.
# $text (name) - as the library that reads command lines says it, in English
not-understood = The command could not be read: { $text }

revision-wanted = before
later-wanted = after
folder-wanted = folder
compare-summary = report what changed between two versions of plans, and what is unsafe now
compare =
    Compares two files, two folders or two git revisions: lines that changed in meaning, findings that are new, gone or accepted, limits and figures that moved, and stock. Layout and comments do not count. Renamed and moved plans and supports are recognized. With one revision, compares it with the files in this folder.

    Exit code: 0 when no plan is less safe than it was; 1 when a plan is less safe; 2 when something could not be read.
compare-before = a file, a folder, or a git revision such as main or HEAD~1
compare-after = the same; without it, the files in this folder
compare-in = for a git revision: the folder whose plans are compared

fix-summary = change plans so that less in them is unsafe
fix =
    Tries the fixes that the checks offer, one by one, and keeps a fix only when less is unsafe with it and nothing new is. Where no single fix helps, it tries pairs. Prints each step, and writes the files. With --dry-run, writes nothing.

    Exit code: 0 when nothing unsafe is left; 1 when something unsafe is left; 2 when a file could not be read or written.
dry-run = print the steps and the changed lines; write nothing
