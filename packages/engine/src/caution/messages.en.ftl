heading = Limits of this tool
text = This is a planning and teaching aid. It does not see the scene, and it can be wrong. It does not replace the authority having jurisdiction, local procedures, a licensed engineer, or your own size-up. If what you see differs from the plan, believe what you see.
