title = Post too slender
protects = A long, thin post buckles long before the wood crushes.

# $strut (name)
# $post (name)
# $length (quantity)
# $slenderness (quantity)
# $sum (calculation)
# $limit (quantity)
# $advice (message)
too-slender = Strut { $strut } ({ $post }) is { $length } long. Its slenderness is { $slenderness } ({ $sum }). The limit is { $limit }. { $advice }

# $most (quantity)
use-shorter = Use a thicker post, or a post of at most { $most }.

use-thicker = Use a thicker or a shorter post.

# $limit (quantity)
limit-set-here = The limit is set here: { $limit }.
