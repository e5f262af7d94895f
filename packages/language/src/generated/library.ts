// Written by build/embed.mjs. Do not edit.
/** The bundled library: file name to text. */
export const library: Readonly<Record<string, string>> = {
  'policy.crib': `// The limits that ship. A department writes its own policy over these:
//
//   policy CountyPolicy : Shipped {
//     least overhang  5 in  source published "County training manual" "page 12"
//   }
//
// Making a limit stricter needs no words. Making one looser needs \`because "the reason"\`, and shows on every sheet.
// Where published sources disagree, the safer one stands here and the other is named beside it.

policy Shipped {
  // Timber across the grain. 500 psi on the dressed area of a 4x4 gives 6,125 lb a crossing, 24,500 lb on four,
  // printed as 24,000 lb. Douglas fir-larch and southern pine stand above 500 psi dry; hem-fir and
  // spruce-pine-fir do not (NDS Supplement 2018, Table 4A). So the lesser of the two rules.
  crossing stress    500 psi  source published "Rescue Systems 1, California State Fire Training, December 2000" "chapter 30: 24,000 lb on a 2 by 2 of 4x4"
  crossing basis     lesser   source common practice
  crossing rounding  1,000 lb source published "Rescue Systems 1, California State Fire Training, December 2000" "chapter 30: 24,500 lb printed as 24,000 lb"

  // Crib height over the width outside to outside of the contacts. What crews of heavy rescue are taught.
  // Taught elsewhere: 3 times, or 2 times, the length of the timber (trade press, second-hand). The width of the
  // contacts is less than the length, so these are the stricter reading.
  height ratio all contacts   3    source common practice
  height ratio some contacts  1.5  source common practice
  height ratio one contact    1    source from memory "US Army Corps of Engineers, Shoring Operations Guide, section 2"

  // Overhang past the contact. Published for 4x4: about the timber's own dimension (Rescue Systems 1, chapter 30).
  // Trade press: 3 to 4 in. Below 3 in the NDS takes its bearing-length factor away too.
  least overhang      4 in           source common practice
  most overhang       6 in           source common practice
  wedge travel        0.5 to 2 in    source common practice
  joist reach         2 in           source common practice
  contact alignment   1 in           source common practice
  steepest capture    10 deg         source common practice

  // Struts. Taught: about 45 degrees and not flatter. 45 to 70 is heard as well (from memory).
  least strut angle   45 deg         source common practice
  most strut angle    75 deg         source common practice

  // Sideways. 2 % of the vertical load is the least and 10 % is desirable for a shore (FEMA Rescue Specialist
  // course, 1998, Module 1A).
  push margin         10 %           source published "FEMA US&R Rescue Specialist Training Manual, June 1998" "Module 1A, shoring: 10 % of the vertical load"
  push height         cargo centre   source common practice
  use limit           100 %          source common practice

  // Friction. Wood on wood: 0.45 sawn, 0.3 planed (CTU Code, appendix 2); 0.5 (OpenStax University Physics 1,
  // Table 6.1). Planed wood on smooth metal sheet: 0.2; sawn: 0.3.
  friction timber on timber  0.45    source published "CTU Code (IMO, ILO, UNECE)" "appendix 2, sawn timber on plywood"
  friction timber on metal   0.3     source published "CTU Code (IMO, ILO, UNECE)" "appendix 2, sawn timber on stainless sheet"
  friction strut foot        0.3     source published "OpenStax University Physics, volume 1" "Table 6.1, metal on wood, moving"
  grade needing chocks       0 %     source common practice

  // An 8x8 is dressed to 7.25 in dry (PS 20) and to 7.5 in green (PS 20; the NDS section table). 6.6 % in area.
  dressed size of 8x8  dry           source published "PS 20 American Softwood Lumber Standard" "timbers of 7 in and more: 3/4 in off, dry"

  // Plausibility of what was typed, not safety. Legal limits of the United States.
  axle limit single    20,000 lb     source published "23 CFR 658.17" "paragraph (c)"
  axle limit tandem    34,000 lb     source published "23 CFR 658.17" "paragraph (d)"
  gross limit          80,000 lb     source published "23 CFR 658.17" "paragraph (b)"

  egress width         3 ft          source common practice
  post slenderness     50            source published "NDS for Wood Construction" "3.7.1.4"
  stiffness spread     2             source common practice
}
`,
  'species.crib': `// Timber species. Design values are those for No. 2 dimension lumber, dry, of the National Design Specification
// (American Wood Council). Across the grain they hold for 0.04 in of crushing and are not raised for short loads.
//
// Across the grain and density were read from published tables. The values along the grain and the moduli of
// elasticity are from memory unless they name a table: they matter for posts and for how a load is shared, not for
// the capacity of a crib. The modulus across the grain is a twentieth of that along it (from memory).

species DouglasFirLarch {
  title           "Douglas fir-larch"
  across grain    625 psi        source published "NDS Supplement 2018" "Table 4A"
  along grain     1,350 psi      source from memory "NDS Supplement, Table 4A, No. 2"
  modulus         1,600,000 psi  source from memory "NDS Supplement, Table 4A, No. 2"
  least modulus   580,000 psi    source from memory "NDS Supplement, Table 4A, No. 2"
  modulus across  80,000 psi     source from memory "Wood Handbook, Table 5-1: 0.05 of the modulus along the grain"
  density         33.6 pcf       source published "AF&PA Wood Structural Design Data" "1992 revisions, species table"
}

species SouthernPine {
  title           "southern pine"
  across grain    565 psi        source published "NDS Supplement" "Table 4A (4B in older editions)"
  along grain     1,450 psi      source from memory "NDS Supplement, Table 4B, No. 2, 4 in wide"
  modulus         1,400,000 psi  source from memory "NDS Supplement, Table 4B, No. 2"
  least modulus   510,000 psi    source from memory "NDS Supplement, Table 4B, No. 2"
  modulus across  70,000 psi     source from memory "a twentieth of the modulus along the grain"
  density         36.7 pcf       source published "AF&PA Wood Structural Design Data" "1992 revisions, species table"
}

// 5 in and larger, southern pine is graded wet and its value across the grain is far lower.
species SouthernPineTimbers : SouthernPine {
  title           "southern pine, 5 in and larger"
  across grain    375 psi        source from memory "NDS Supplement, Table 4D"
}

species HemFir {
  title           "hem-fir"
  across grain    405 psi        source published "NDS Supplement" "Table 4A"
  along grain     1,300 psi      source from memory "NDS Supplement, Table 4A, No. 2"
  modulus         1,300,000 psi  source from memory "NDS Supplement, Table 4A, No. 2"
  least modulus   470,000 psi    source from memory "NDS Supplement, Table 4A, No. 2"
  modulus across  65,000 psi     source from memory "a twentieth of the modulus along the grain"
  density         29.2 pcf       source published "AF&PA Wood Structural Design Data" "1992 revisions, species table"
}

species SprucePineFir {
  title           "spruce-pine-fir"
  across grain    425 psi        source published "NDS Supplement 2018" "Table 4A"
  along grain     1,150 psi      source published "HUD Residential Structural Design Guide, 2nd edition" "Example 5.6, No. 2"
  modulus         1,400,000 psi  source from memory "NDS Supplement, Table 4A, No. 2"
  least modulus   510,000 psi    source published "HUD Residential Structural Design Guide, 2nd edition" "Example 5.6, No. 2"
  modulus across  70,000 psi     source from memory "a twentieth of the modulus along the grain"
  density         28.5 pcf       source published "AF&PA Wood Structural Design Data" "1992 revisions, species table"
}

// Oak carries more and warns less: hardwood can fail without the slow, noisy crushing of softwood.
species MixedOak {
  title           "mixed oak"
  across grain    800 psi        source from memory "NDS Supplement, Table 4A"
  along grain     825 psi        source from memory "NDS Supplement, Table 4A, No. 2"
  modulus         1,100,000 psi  source from memory "NDS Supplement, Table 4A, No. 2"
  least modulus   400,000 psi    source from memory "NDS Supplement, Table 4A, No. 2"
  modulus across  55,000 psi     source from memory "a twentieth of the modulus along the grain"
  density         44.7 pcf       source published "AF&PA Wood Structural Design Data" "1992 revisions, species table"
}
`,
  'ties.crib': `// Straps, chains and wire rope: working load limits.
//
// These are the values that 49 CFR 393.108 gives to UNMARKED gear (webbing and wire rope) and to chain by its grade.
// A mark on the gear overrides them: write a type of your own with what the mark says. Unmarked chain counts as
// grade 30, paragraph (b). The weakest part rules the whole: hook, anchor, ratchet and all, paragraph (a).
// Grade 80 in 5/16 in stands below grade 70 in the regulation. That is how it is printed.

// Synthetic webbing.

strap type RatchetStrap1_75in {
  rating  1,750 lb  source published "49 CFR 393.108" "webbing table, 1.75 in, unmarked"
}

strap type RatchetStrap2in {
  rating  2,000 lb  source published "49 CFR 393.108" "webbing table, 2 in, unmarked"
}

strap type RatchetStrap4in {
  rating  4,000 lb  source published "49 CFR 393.108" "webbing table, 4 in, unmarked"
}

// Chain, grade 30.

chain type Chain30_1_4in {
  rating  1,300 lb  source published "49 CFR 393.108" "chain table, grade 30, 1/4 in"
}

chain type Chain30_5_16in {
  rating  1,900 lb  source published "49 CFR 393.108" "chain table, grade 30, 5/16 in"
}

chain type Chain30_3_8in {
  rating  2,650 lb  source published "49 CFR 393.108" "chain table, grade 30, 3/8 in"
}

chain type Chain30_7_16in {
  rating  3,700 lb  source published "49 CFR 393.108" "chain table, grade 30, 7/16 in"
}

chain type Chain30_1_2in {
  rating  4,500 lb  source published "49 CFR 393.108" "chain table, grade 30, 1/2 in"
}

chain type Chain30_5_8in {
  rating  6,900 lb  source published "49 CFR 393.108" "chain table, grade 30, 5/8 in"
}

// Chain, grade 43.

chain type Chain43_1_4in {
  rating  2,600 lb  source published "49 CFR 393.108" "chain table, grade 43, 1/4 in"
}

chain type Chain43_5_16in {
  rating  3,900 lb  source published "49 CFR 393.108" "chain table, grade 43, 5/16 in"
}

chain type Chain43_3_8in {
  rating  5,400 lb  source published "49 CFR 393.108" "chain table, grade 43, 3/8 in"
}

chain type Chain43_1_2in {
  rating  9,200 lb  source published "49 CFR 393.108" "chain table, grade 43, 1/2 in"
}

chain type Chain43_5_8in {
  rating  13,000 lb  source published "49 CFR 393.108" "chain table, grade 43, 5/8 in"
}

// Chain, grade 70.

chain type Chain70_1_4in {
  rating  3,150 lb  source published "49 CFR 393.108" "chain table, grade 70, 1/4 in"
}

chain type Chain70_5_16in {
  rating  4,700 lb  source published "49 CFR 393.108" "chain table, grade 70, 5/16 in"
}

chain type Chain70_3_8in {
  rating  6,600 lb  source published "49 CFR 393.108" "chain table, grade 70, 3/8 in"
}

chain type Chain70_7_16in {
  rating  8,750 lb  source published "49 CFR 393.108" "chain table, grade 70, 7/16 in"
}

chain type Chain70_1_2in {
  rating  11,300 lb  source published "49 CFR 393.108" "chain table, grade 70, 1/2 in"
}

chain type Chain70_5_8in {
  rating  15,800 lb  source published "49 CFR 393.108" "chain table, grade 70, 5/8 in"
}

// Chain, grade 80.

chain type Chain80_1_4in {
  rating  3,500 lb  source published "49 CFR 393.108" "chain table, grade 80, 1/4 in"
}

chain type Chain80_5_16in {
  rating  4,500 lb  source published "49 CFR 393.108" "chain table, grade 80, 5/16 in"
}

chain type Chain80_3_8in {
  rating  7,100 lb  source published "49 CFR 393.108" "chain table, grade 80, 3/8 in"
}

chain type Chain80_1_2in {
  rating  12,000 lb  source published "49 CFR 393.108" "chain table, grade 80, 1/2 in"
}

chain type Chain80_5_8in {
  rating  18,100 lb  source published "49 CFR 393.108" "chain table, grade 80, 5/8 in"
}

// Chain, grade 100.

chain type Chain100_1_4in {
  rating  4,300 lb  source published "49 CFR 393.108" "chain table, grade 100, 1/4 in"
}

chain type Chain100_5_16in {
  rating  5,700 lb  source published "49 CFR 393.108" "chain table, grade 100, 5/16 in"
}

chain type Chain100_3_8in {
  rating  8,800 lb  source published "49 CFR 393.108" "chain table, grade 100, 3/8 in"
}

chain type Chain100_1_2in {
  rating  15,000 lb  source published "49 CFR 393.108" "chain table, grade 100, 1/2 in"
}

chain type Chain100_5_8in {
  rating  22,600 lb  source published "49 CFR 393.108" "chain table, grade 100, 5/8 in"
}

// Wire rope, 6 by 37, fibre core.

wire rope type WireRope_1_4in {
  rating  1,400 lb  source published "49 CFR 393.108" "wire rope table, 6 by 37 fibre core, 1/4 in"
}

wire rope type WireRope_5_16in {
  rating  2,100 lb  source published "49 CFR 393.108" "wire rope table, 6 by 37 fibre core, 5/16 in"
}

wire rope type WireRope_3_8in {
  rating  3,000 lb  source published "49 CFR 393.108" "wire rope table, 6 by 37 fibre core, 3/8 in"
}

wire rope type WireRope_1_2in {
  rating  5,300 lb  source published "49 CFR 393.108" "wire rope table, 6 by 37 fibre core, 1/2 in"
}

wire rope type WireRope_5_8in {
  rating  8,300 lb  source published "49 CFR 393.108" "wire rope table, 6 by 37 fibre core, 5/8 in"
}

wire rope type WireRope_3_4in {
  rating  10,900 lb  source published "49 CFR 393.108" "wire rope table, 6 by 37 fibre core, 3/4 in"
}

// A strap whose label is gone or cannot be read. Nothing is presumed for it: the check of its load cannot run.

strap type UnmarkedStrap {
  rating  unknown  source unknown
}
`,
};
