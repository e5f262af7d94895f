// Written by packages/language/build/shipped-policy.mjs. Do not edit.
import type { Policy } from '../plan/policy.js';

/**
 * The limits that ship, as data: each with its value in SI (m, N, Pa, rad; ratios and counts plain) and its source.
 * The values are those of the bundled library's `policy.crib`, whose comments say why each was chosen.
 */
export const shippedPolicy: Policy = {
  "id": "policy/Shipped",
  "name": "Shipped",
  "extends": [],
  "limits": {
    "crossing stress": {
      "key": "crossing stress",
      "value": 3447378.6465841806,
      "source": {
        "kind": "published",
        "title": "Rescue Systems 1, California State Fire Training, December 2000",
        "locator": "chapter 30: 24,000 lb on a 2 by 2 of 4x4"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "crossing stress"
      },
      "loosened": false
    },
    "crossing basis": {
      "key": "crossing basis",
      "value": "lesser",
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "crossing basis"
      },
      "loosened": false
    },
    "crossing rounding": {
      "key": "crossing rounding",
      "value": 4448.2216152605,
      "source": {
        "kind": "published",
        "title": "Rescue Systems 1, California State Fire Training, December 2000",
        "locator": "chapter 30: 24,500 lb printed as 24,000 lb"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "crossing rounding"
      },
      "loosened": false
    },
    "height ratio all contacts": {
      "key": "height ratio all contacts",
      "value": 3,
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "height ratio all contacts"
      },
      "loosened": false
    },
    "height ratio some contacts": {
      "key": "height ratio some contacts",
      "value": 1.5,
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "height ratio some contacts"
      },
      "loosened": false
    },
    "height ratio one contact": {
      "key": "height ratio one contact",
      "value": 1,
      "source": {
        "kind": "from memory",
        "title": "US Army Corps of Engineers, Shoring Operations Guide, section 2"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "height ratio one contact"
      },
      "loosened": false
    },
    "least overhang": {
      "key": "least overhang",
      "value": 0.1016,
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "least overhang"
      },
      "loosened": false
    },
    "most overhang": {
      "key": "most overhang",
      "value": 0.1524,
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "most overhang"
      },
      "loosened": false
    },
    "wedge travel": {
      "key": "wedge travel",
      "value": {
        "low": 0.0127,
        "high": 0.0508
      },
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "wedge travel"
      },
      "loosened": false
    },
    "most shims": {
      "key": "most shims",
      "value": 0.0508,
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "most shims"
      },
      "loosened": false
    },
    "most packing": {
      "key": "most packing",
      "value": 0.1016,
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "most packing"
      },
      "loosened": false
    },
    "joist reach": {
      "key": "joist reach",
      "value": 0.0508,
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "joist reach"
      },
      "loosened": false
    },
    "contact alignment": {
      "key": "contact alignment",
      "value": 0.0254,
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "contact alignment"
      },
      "loosened": false
    },
    "steepest capture": {
      "key": "steepest capture",
      "value": 0.17453292519943295,
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "steepest capture"
      },
      "loosened": false
    },
    "least strut angle": {
      "key": "least strut angle",
      "value": 0.7853981633974483,
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "least strut angle"
      },
      "loosened": false
    },
    "most strut angle": {
      "key": "most strut angle",
      "value": 1.3089969389957472,
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "most strut angle"
      },
      "loosened": false
    },
    "push margin": {
      "key": "push margin",
      "value": 0.1,
      "source": {
        "kind": "published",
        "title": "FEMA US&R Rescue Specialist Training Manual, June 1998",
        "locator": "Module 1A, shoring: 10 % of the vertical load"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "push margin"
      },
      "loosened": false
    },
    "push height": {
      "key": "push height",
      "value": "cargo center",
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "push height"
      },
      "loosened": false
    },
    "use limit": {
      "key": "use limit",
      "value": 1,
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "use limit"
      },
      "loosened": false
    },
    "friction timber on timber": {
      "key": "friction timber on timber",
      "value": 0.45,
      "source": {
        "kind": "published",
        "title": "CTU Code (IMO, ILO, UNECE)",
        "locator": "appendix 2, sawn timber on plywood"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "friction timber on timber"
      },
      "loosened": false
    },
    "friction timber on metal": {
      "key": "friction timber on metal",
      "value": 0.3,
      "source": {
        "kind": "published",
        "title": "CTU Code (IMO, ILO, UNECE)",
        "locator": "appendix 2, sawn timber on stainless sheet"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "friction timber on metal"
      },
      "loosened": false
    },
    "friction strut base": {
      "key": "friction strut base",
      "value": 0.3,
      "source": {
        "kind": "published",
        "title": "OpenStax University Physics, volume 1",
        "locator": "Table 6.1, metal on wood, moving"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "friction strut base"
      },
      "loosened": false
    },
    "grade needing chocks": {
      "key": "grade needing chocks",
      "value": 0,
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "grade needing chocks"
      },
      "loosened": false
    },
    "dressed size of 8x8": {
      "key": "dressed size of 8x8",
      "value": "dry",
      "source": {
        "kind": "published",
        "title": "PS 20 American Softwood Lumber Standard",
        "locator": "timbers of 7 in and more: 3/4 in off, dry"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "dressed size of 8x8"
      },
      "loosened": false
    },
    "axle limit single": {
      "key": "axle limit single",
      "value": 88964.43230521,
      "source": {
        "kind": "published",
        "title": "23 CFR 658.17",
        "locator": "paragraph (c)"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "axle limit single"
      },
      "loosened": false
    },
    "axle limit tandem": {
      "key": "axle limit tandem",
      "value": 151239.53491885698,
      "source": {
        "kind": "published",
        "title": "23 CFR 658.17",
        "locator": "paragraph (d)"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "axle limit tandem"
      },
      "loosened": false
    },
    "gross limit": {
      "key": "gross limit",
      "value": 355857.72922084,
      "source": {
        "kind": "published",
        "title": "23 CFR 658.17",
        "locator": "paragraph (b)"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "gross limit"
      },
      "loosened": false
    },
    "egress width": {
      "key": "egress width",
      "value": 0.9144,
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "egress width"
      },
      "loosened": false
    },
    "post slenderness": {
      "key": "post slenderness",
      "value": 50,
      "source": {
        "kind": "published",
        "title": "NDS for Wood Construction",
        "locator": "3.7.1.4"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "post slenderness"
      },
      "loosened": false
    },
    "sudden loss factor": {
      "key": "sudden loss factor",
      "value": 1,
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "sudden loss factor"
      },
      "loosened": false
    },
    "stiffness spread": {
      "key": "stiffness spread",
      "value": 2,
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "stiffness spread"
      },
      "loosened": false
    },
    "ground under cribs": {
      "key": "ground under cribs",
      "value": "by pressure",
      "source": {
        "kind": "common practice"
      },
      "ref": {
        "element": "policy/Shipped",
        "property": "ground under cribs"
      },
      "loosened": false
    }
  },
  "ref": {
    "element": "policy/Shipped"
  }
};
