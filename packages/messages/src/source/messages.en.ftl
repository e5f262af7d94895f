### Where a number comes from.

common-practice = common practice, no source
from-memory = from memory
# $title (name)
from-memory-of = from memory: { $title }
# $policy (name)
# $limit (name)
policy = policy { $policy }, { $limit }
# $policy (name)
# $limit (name)
# $of (text) - the source of the policy's limit
policy-of = policy { $policy }, { $limit }: { $of }
stated = stated in the plan
invented = invented for the example
computed = calculated
unknown = source not known
