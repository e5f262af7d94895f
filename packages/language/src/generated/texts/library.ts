// Written by build/embed.mjs. Do not edit.
/** The bundled library: file name to text. */
export const libraryTexts = (): Readonly<Record<string, string>> => texts;

const texts = {
  'cargo.crib': `// What cargo weighs for its volume, as loaded where the source says so. \`solid\` is the stuff itself, without the gaps
// between pieces. What may move on its own is marked: liquid in a part-full tank, grain, loose stone.
//
//   cargo 1,200 ft3 of Gravel from 6 ft to 30 ft

cargo type Water "water" {
  density  62.4 pcf  source published "Densities of common materials (residential design guide)" "table"
  shifts
}

cargo type Milk "milk" {
  density  64.3 pcf  source from memory "8.6 lb a gallon"
  shifts
}

cargo type Gasoline "gasoline" {
  density  42 to 46.4 pcf  source published "ASCE 7" "Table C3-2, 42.0; 6.2 lb a gallon is printed elsewhere"
  shifts
}

cargo type Diesel "diesel fuel" {
  density  52 to 53.2 pcf  source published "Weights and measures table" "7.1 lb a gallon; lower end from memory"
  shifts
}

cargo type CrudeOil "crude oil" {
  density  55 pcf  source published "ASCE 7" "Table C3-2"
  shifts
}

cargo type Asphaltum "liquid asphalt" {
  density  81 pcf  source published "ASCE 7" "Table C3-2"
  shifts
}

cargo type Gravel "gravel, dry" {
  density  105 pcf  source published "Densities of common materials (residential design guide)" "table"
  shifts
}

cargo type Sand "sand, dry" {
  density  90 pcf  source published "Densities of common materials (residential design guide)" "table"
  shifts
}

cargo type Cement "portland cement, loose" {
  density  90 to 94 pcf  source published "ASCE 7" "Table C3-2, 90; 94 in bags"
  shifts
}

cargo type Coal "coal, piled" {
  density  47 pcf  source published "ASCE 7" "Table C3-2"
  shifts
}

cargo type Barley "barley" {
  density  38 pcf  source published "Bulk density data sheet" "table"
  shifts
}

cargo type Apples "apples" {
  density 40 pcf  source published "Bulk density data sheet" "table"
}

cargo type Butter "butter" {
  density 54 pcf  source published "Bulk density data sheet" "table"
}

cargo type Cardboard "cardboard" {
  density 43 pcf  source published "Bulk density data sheet" "table"
}

cargo type PaperRolls "paper in rolls" {
  density  40 to 55 pcf  source from memory
  shifts
}

cargo type Steel "steel, solid" {
  density 492 pcf  source published "Densities of common materials (residential design guide)" "table"
}

cargo type Aluminum "aluminum, solid" {
  density 168.6 to 170 pcf  source published "Densities of common materials (residential design guide)" "table, 170; OpenStax University Physics 1, Table 14.1, 168.6"
}

cargo type Concrete "concrete" {
  density 145 to 150 pcf  source published "Densities of common materials (residential design guide)" "table"
}

cargo type GranitePiled "granite, piled" {
  density  96 pcf  source published "Densities of common materials (residential design guide)" "table, stone in bulk"
  shifts
}

cargo type GraniteSolid "granite, solid" {
  density 168.6 pcf  source published "OpenStax University Physics, volume 1" "Table 14.1"
}

cargo type Brick "brick" {
  density 120 pcf  source published "Bulk density data sheet" "table"
}

cargo type GypsumBoard "gypsum board" {
  density 48 pcf  source published "Densities of common materials (residential design guide)" "table"
}

cargo type Plywood "plywood" {
  density 36 pcf  source published "Densities of common materials (residential design guide)" "table"
}

cargo type FirLumber "Douglas fir lumber" {
  density 34 pcf  source published "Densities of common materials (residential design guide)" "table, 10 % moisture"
}

cargo type SpruceLumber "spruce-pine-fir lumber" {
  density 29 pcf  source published "Densities of common materials (residential design guide)" "table, 10 % moisture"
}

cargo type Glass "glass, solid" {
  density 160 pcf  source published "Densities of common materials (residential design guide)" "table"
}

cargo type MixedFreight "mixed freight" {
  density 7.5 to 18.5 pcf  source published "FHWA, Comprehensive Truck Size and Weight Limits Study" "figure D1, payload blocks"
}
`,
  'gear.crib': `// Struts and stepped blocks. The rated ones are INVENTED, to learn and to teach with. Yours have a table of their own:
// copy one of these into your fleet's file and write in what the maker's table says, line by line. Between two lines
// the lower one counts.

strut type Strut3to5ft "invented strut, 3 ft to 5 ft" {
  source  invented
  length  3 ft to 5 ft
  rating  14,000 lb at 3 ft
  rating  12,000 lb at 4 ft
  rating  10,000 lb at 5 ft
}

strut type Strut4to8ft "invented strut, 4 ft to 8 ft" {
  source  invented
  length  4 ft to 8 ft
  rating  12,000 lb at 4 ft
  rating  10,000 lb at 6 ft
  rating  7,000 lb at 8 ft
}

strut type Strut7to12ft "invented strut, 7 ft to 12 ft" {
  source  invented
  length  7 ft to 12 ft
  rating  8,000 lb at 7 ft
  rating  6,000 lb at 9 ft
  rating  4,000 lb at 12 ft
}

// A strut that nobody has a table for. Its load cannot be checked, and the plan says so.
strut type UnratedStrut "strut without a table" {
  length  4 ft to 8 ft
  rating  unknown  source unknown
}

// Timber posts carry by the column formula of the NDS, 3.7.1.
strut type Post4x4 "4x4 timber post" {
  post Fir4x4
}

strut type Post6x6 "6x6 timber post" {
  post Fir6x6
}

step chock type StepChock "stepped block" {
  heights  3 in, 6 in, 9 in, 12 in  source invented
  rating   unknown                  source unknown
}

step chock type RatedStepChock "invented rated stepped block" {
  source   invented
  heights  3 in, 6 in, 9 in, 12 in
  rating   8,000 lb
}
`,
  'policy.crib': `// The limits that ship. A department writes its own policy over these:
//
//   policy CountyPolicy : Shipped {
//     least overhang  5 in  source published "County training manual" "page 12"
//   }
//
// Making a limit stricter needs no words. Making one looser needs \`because "the reason"\`, and shows on every sheet.
// Where published sources disagree, the safer one stands here and the other is named beside it.

policy Shipped {
  // Timber perpendicular to grain. 500 psi on the dressed area of a 4x4 gives 6,125 lb a crossing, 24,500 lb on four,
  // printed as 24,000 lb. Douglas fir-larch and southern pine stand above 500 psi dry; hem-fir and
  // spruce-pine-fir do not (NDS Supplement 2018, Table 4A). So the lesser of the two rules.
  crossing stress    500 psi   source published "Rescue Systems 1, California State Fire Training, December 2000" "chapter 30: 24,000 lb on a 2 by 2 of 4x4"
  crossing basis     lesser    source common practice
  crossing rounding  1,000 lb  source published "Rescue Systems 1, California State Fire Training, December 2000" "chapter 30: 24,500 lb printed as 24,000 lb"

  // Crib height over the width outside to outside of the contacts. What crews of heavy rescue are taught.
  // Taught elsewhere: 3 times, or 2 times, the length of the timber (trade press, second-hand). The width of the
  // contacts is less than the length, so these are the stricter reading.
  height ratio all contacts   3    source common practice
  height ratio some contacts  1.5  source common practice
  height ratio one contact    1    source from memory "US Army Corps of Engineers, Shoring Operations Guide, section 2"

  // Overhang past the contact. Published for 4x4: about the timber's own dimension (Rescue Systems 1, chapter 30).
  // Trade press: 3 to 4 in. Below 3 in the NDS takes its bearing-length factor away too.
  least overhang     4 in         source common practice
  most overhang      6 in         source common practice
  wedge travel       0.5 to 2 in  source common practice
  most shims         2 in         source common practice
  most packing       4 in         source common practice
  joist reach        2 in         source common practice
  contact alignment  1 in         source common practice
  steepest capture   10 deg       source common practice

  // Struts. Taught: about 45 degrees and not flatter. 45 to 70 is heard as well (from memory).
  least strut angle  45 deg  source common practice
  most strut angle   75 deg  source common practice

  // Sideways. 2 % of the vertical load is the least and 10 % is desirable for a shore (FEMA Rescue Specialist
  // course, 1998, Module 1A).
  push margin  10 %          source published "FEMA US&R Rescue Specialist Training Manual, June 1998" "Module 1A, shoring: 10 % of the vertical load"
  push height  cargo center  source common practice
  use limit    100 %         source common practice

  // Friction. Wood on wood: 0.45 sawn, 0.3 planed (CTU Code, appendix 2); 0.5 (OpenStax University Physics 1,
  // Table 6.1). Planed wood on smooth metal sheet: 0.2; sawn: 0.3.
  friction timber on timber  0.45  source published "CTU Code (IMO, ILO, UNECE)" "appendix 2, sawn timber on plywood"
  friction timber on metal   0.3   source published "CTU Code (IMO, ILO, UNECE)" "appendix 2, sawn timber on stainless sheet"
  friction strut base        0.3   source published "OpenStax University Physics, volume 1" "Table 6.1, metal on wood, moving"
  grade needing chocks       0 %   source common practice

  // An 8x8 is dressed to 7.25 in dry (PS 20) and to 7.5 in green (PS 20; the NDS section table). 6.6 % in area.
  dressed size of 8x8 dry  source published "PS 20 American Softwood Lumber Standard" "timbers of 7 in and more: 3/4 in off, dry"

  // Plausibility of what was typed, not safety. Legal limits of the United States.
  axle limit single  20,000 lb  source published "23 CFR 658.17" "paragraph (c)"
  axle limit tandem  34,000 lb  source published "23 CFR 658.17" "paragraph (d)"
  gross limit        80,000 lb  source published "23 CFR 658.17" "paragraph (b)"

  egress width      3 ft  source common practice
  post slenderness  50    source published "NDS for Wood Construction" "3.7.1.4"
  stiffness spread  2     source common practice

  // A support that goes at once, not slowly, can put up to twice as much more on the others: a weight let go on springs
  // moves past its rest (Roark, chapter on dynamic stresses, from memory). Shipped as 1: a slow loss. Set 2 where a tire
  // may burst.
  sudden loss factor 1  source common practice

  // What is lost in turn is what held before the crew came, and the ground under a strut's one foot. The ground under
  // the crew's own cribs is judged by its pressure. On ground that may wash out or thaw: \`may give way\`.
  ground under cribs by pressure  source common practice
}
`,
  'species.crib': `// Timber species. Design values are those for No. 2 dimension lumber, dry, of the National Design Specification
// (American Wood Council). Perpendicular to grain they hold for 0.04 in of crushing and are not raised for short loads.
//
// Perpendicular to grain and density were read from published tables. The values parallel to grain and the moduli of
// elasticity are from memory unless they name a table: they matter for posts and for how a load is shared, not for
// the capacity of a crib. Timbers of 5 in and more have values of their own (Table 4D). The modulus perpendicular to grain
// is a twentieth of that along it (from memory).

species DouglasFir "Douglas fir-larch" {
  perpendicular to grain  625 psi        source published "NDS Supplement 2018" "Table 4A"
  parallel to grain       1,350 psi      source from memory "NDS Supplement, Table 4A, No. 2"
  modulus parallel        1,600,000 psi  source from memory "NDS Supplement, Table 4A, No. 2"
  modulus least           580,000 psi    source from memory "NDS Supplement, Table 4A, No. 2"
  modulus perpendicular   80,000 psi     source from memory "Wood Handbook, Table 5-1: 0.05 of the modulus parallel to grain"
  density                 33.6 pcf       source published "AF&PA Wood Structural Design Data" "1992 revisions, species table"
}

// 5 in and larger is graded as posts and timbers, and carries far less parallel to grain.
species DouglasFirTimbers "Douglas fir-larch, 5 in and larger" {
  perpendicular to grain  625 psi        source from memory "NDS Supplement, Table 4D, No. 2 posts and timbers"
  parallel to grain       700 psi        source from memory "NDS Supplement, Table 4D, No. 2 posts and timbers"
  modulus parallel        1,300,000 psi  source from memory "NDS Supplement, Table 4D, No. 2 posts and timbers"
  modulus least           470,000 psi    source from memory "NDS Supplement, Table 4D, No. 2 posts and timbers"
  modulus perpendicular   65,000 psi     source from memory "a twentieth of the modulus parallel to grain"
  density                 33.6 pcf       source published "AF&PA Wood Structural Design Data" "1992 revisions, species table"
}

species SouthernPine "southern pine" {
  perpendicular to grain  565 psi        source published "NDS Supplement" "Table 4A (4B in older editions)"
  parallel to grain       1,450 psi      source from memory "NDS Supplement, Table 4B, No. 2, 4 in wide"
  modulus parallel        1,400,000 psi  source from memory "NDS Supplement, Table 4B, No. 2"
  modulus least           510,000 psi    source from memory "NDS Supplement, Table 4B, No. 2"
  modulus perpendicular   70,000 psi     source from memory "a twentieth of the modulus parallel to grain"
  density                 36.7 pcf       source published "AF&PA Wood Structural Design Data" "1992 revisions, species table"
}

// 5 in and larger, southern pine is graded wet and its value perpendicular to grain is far lower.
species SouthernPineTimbers "southern pine, 5 in and larger" {
  perpendicular to grain  375 psi        source from memory "NDS Supplement, Table 4D"
  parallel to grain       525 psi        source from memory "NDS Supplement, Table 4D, No. 2"
  modulus parallel        1,200,000 psi  source from memory "NDS Supplement, Table 4D, No. 2"
  modulus least           440,000 psi    source from memory "NDS Supplement, Table 4D, No. 2"
  modulus perpendicular   60,000 psi     source from memory "a twentieth of the modulus parallel to grain"
  density                 36.7 pcf       source published "AF&PA Wood Structural Design Data" "1992 revisions, species table"
}

species HemFir "hem-fir" {
  perpendicular to grain  405 psi        source published "NDS Supplement" "Table 4A"
  parallel to grain       1,300 psi      source from memory "NDS Supplement, Table 4A, No. 2"
  modulus parallel        1,300,000 psi  source from memory "NDS Supplement, Table 4A, No. 2"
  modulus least           470,000 psi    source from memory "NDS Supplement, Table 4A, No. 2"
  modulus perpendicular   65,000 psi     source from memory "a twentieth of the modulus parallel to grain"
  density                 29.2 pcf       source published "AF&PA Wood Structural Design Data" "1992 revisions, species table"
}

species SprucePineFir "spruce-pine-fir" {
  perpendicular to grain  425 psi        source published "NDS Supplement 2018" "Table 4A"
  parallel to grain       1,150 psi      source published "HUD Residential Structural Design Guide, 2nd edition" "Example 5.6, No. 2"
  modulus parallel        1,400,000 psi  source from memory "NDS Supplement, Table 4A, No. 2"
  modulus least           510,000 psi    source published "HUD Residential Structural Design Guide, 2nd edition" "Example 5.6, No. 2"
  modulus perpendicular   70,000 psi     source from memory "a twentieth of the modulus parallel to grain"
  density                 28.5 pcf       source published "AF&PA Wood Structural Design Data" "1992 revisions, species table"
}

species SprucePineFirTimbers "spruce-pine-fir, 5 in and larger" {
  perpendicular to grain  425 psi        source from memory "NDS Supplement, Table 4D, No. 2 posts and timbers"
  parallel to grain       500 psi        source from memory "NDS Supplement, Table 4D, No. 2 posts and timbers"
  modulus parallel        1,000,000 psi  source from memory "NDS Supplement, Table 4D, No. 2 posts and timbers"
  modulus least           370,000 psi    source from memory "NDS Supplement, Table 4D, No. 2 posts and timbers"
  modulus perpendicular   50,000 psi     source from memory "a twentieth of the modulus parallel to grain"
  density                 28.5 pcf       source published "AF&PA Wood Structural Design Data" "1992 revisions, species table"
}

// Oak carries more and warns less: hardwood can fail without the slow, noisy crushing of softwood.
species MixedOak "mixed oak" {
  perpendicular to grain  800 psi        source from memory "NDS Supplement, Table 4A"
  parallel to grain       825 psi        source from memory "NDS Supplement, Table 4A, No. 2"
  modulus parallel        1,100,000 psi  source from memory "NDS Supplement, Table 4A, No. 2"
  modulus least           400,000 psi    source from memory "NDS Supplement, Table 4A, No. 2"
  modulus perpendicular   55,000 psi     source from memory "a twentieth of the modulus parallel to grain"
  density                 44.7 pcf       source published "AF&PA Wood Structural Design Data" "1992 revisions, species table"
}
`,
  'surfaces.crib': `// Ground. What it can carry is the least certain number in a plan, and published sources disagree by a factor of two
// to eight. Where they do, the lowest stands under the plain name, and the others have names of their own, so that a
// plan says which one it believes. Building codes speak of footings that stand for years; crane crews of floats that
// stand for a day.
//
// Friction of tires: traction tables of Noon (1994), wet to dry. Friction of timber on ground is from memory unless
// a line says otherwise. Body friction is that of a vehicle's own metal, on its side or its roof: painted sheet is
// smoother than the plain steel of the tables, so their low end counts. Where it is unknown, no push is calculated.

surface asphalt {
  bearing          29 psi        source published "Crane-support ground table, OSHA Alliance Program" "asphalt"
  tire friction    0.50 to 0.65  source published "Noon, traction coefficients, 1994" "wet and dry asphalt"
  timber friction  0.40 to 0.60  source from memory
  body friction    0.20 to 0.50  source from memory
}

surface concrete "concrete paving" {
  bearing          1,000 psi     source published "Crane-support ground table, OSHA Alliance Program" "concrete"
  tire friction    0.60 to 0.75  source published "Noon, traction coefficients, 1994" "wet and dry concrete"
  timber friction  0.45 to 0.70  source published "CTU Code (IMO, ILO, UNECE)" "appendix 2, rough concrete on sawn wood 0.70; lower end from memory"
  body friction    0.10 to 0.50  source published "BS 5975:2008 as quoted by The Concrete Society" "plain steel on cast and on trowelled concrete"
}

// Gravel: 2,000 psf here; 3,000 in the IBC; 6,000 in Chicago's old code; 8,352 to 15,696 in crane practice.
surface gravel {
  bearing          2,000 psf     source published "24 CFR 3285.202" "class 2, gravel and dense sand"
  tire friction    0.35          source published "Noon, traction coefficients, 1994" "gravel and dirt"
  timber friction  0.30 to 0.50  source from memory
  body friction    0.25 to 0.40  source published "NAVFAC DM-7.02 (1986)" "table 1, steel against silty and against clean gravel"
}

surface gravel-by-building-code "gravel, as the building code has it" {
  bearing          3,000 psf     source published "International Building Code 2012" "Table 1806.2, sandy gravel and gravel"
  tire friction    0.35          source published "Noon, traction coefficients, 1994" "gravel and dirt"
  timber friction  0.30 to 0.50  source from memory
  body friction    0.25 to 0.40  source published "NAVFAC DM-7.02 (1986)" "table 1, steel against silty and against clean gravel"
}

surface firm-gravel "firm compacted gravel, as crane crews have it" {
  bearing          58 psi        source published "Crane-support ground table, OSHA Alliance Program" "firm compacted gravel, low"
  tire friction    0.35          source published "Noon, traction coefficients, 1994" "gravel and dirt"
  timber friction  0.30 to 0.50  source from memory
  body friction    0.25 to 0.40  source published "NAVFAC DM-7.02 (1986)" "table 1, steel against silty and against clean gravel"
}

surface crushed-stone "compressed crushed stone" {
  bearing          36 psi        source published "Crane-support ground table, OSHA Alliance Program" "compressed crushed stone"
  tire friction    0.35          source published "Noon, traction coefficients, 1994" "gravel and dirt"
  timber friction  0.30 to 0.50  source from memory
  body friction    0.30 to 0.40  source published "NAVFAC DM-7.02 (1986)" "table 1, steel against single-size and against well-graded rock fill"
}

// Sand: 1,500 psf here; 2,000 in the IBC; 5,000 compact and clean in Chicago's old code.
surface sand {
  bearing          1,500 psf     source published "24 CFR 3285.202" "class 3, sand"
  tire friction    0.25 to 0.35  source from memory
  timber friction  0.25 to 0.45  source from memory
  body friction    0.25 to 0.30  source published "NAVFAC DM-7.02 (1986)" "table 1, steel against silty and against clean sand"
}

// Clay: 1,500 psf in the IBC and in 24 CFR 3285; 500 very soft to 6,000 hard in Chicago's old code; 6,192 firm in
// crane practice.
surface clay "clay or silt" {
  bearing          1,500 psf     source published "International Building Code 2012" "Table 1806.2, clay and silt"
  tire friction    0.20 to 0.35  source from memory
  timber friction  0.25 to 0.45  source from memory
  body friction    unknown       source published "NAVFAC DM-7.02 (1986)" "table 1: for clay adhesion, and no friction"
}

surface soft-clay "very soft clay" {
  bearing          500 psf       source published "Chicago Building Code 13-132-060 (archived)" "table (a), clay, very soft"
  tire friction    0.10 to 0.25  source from memory
  timber friction  0.20 to 0.35  source from memory
  body friction    unknown       source published "NAVFAC DM-7.02 (1986)" "table 1: for soft clay adhesion, and no friction"
}

surface lawn "grass" {
  bearing          1,500 psf     source published "International Building Code 2012" "Table 1806.2, clay and silt: take no more under sod"
  tire friction    0.20 to 0.35  source published "Noon, traction coefficients, 1994" "wet grass 0.20; upper end from memory"
  timber friction  0.20 to 0.40  source from memory
  body friction    unknown       source unknown
}

// No value is presumed for mud, peat, organic silt or unprepared fill (IBC 1806.2). The check of the ground cannot run
// on them: look at it, test it, or spread the load until you believe it.
surface fill "mud, peat or unprepared fill" {
  bearing          unknown       source published "International Building Code 2012" "1806.2: no presumptive value"
  tire friction    0.10 to 0.35  source from memory
  timber friction  0.20 to 0.40  source from memory
  body friction    unknown       source unknown
}

surface snow "packed snow over paving" {
  bearing          unknown       source unknown
  tire friction    0.20 to 0.25  source published "Noon, traction coefficients, 1994" "snow"
  timber friction  0.10 to 0.30  source from memory
  body friction    unknown       source unknown
}

surface ice "ice over paving" {
  bearing          unknown       source unknown
  tire friction    0.10 to 0.15  source published "Noon, traction coefficients, 1994" "ice"
  timber friction  0.05 to 0.15  source from memory
  body friction    0.02 to 0.04  source published "OpenStax University Physics, volume 1" "table 6.1, steel on ice 0.04; lower end from memory"
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
  rating 1,750 lb  source published "49 CFR 393.108" "webbing table, 1.75 in, unmarked"
}

strap type RatchetStrap2in {
  rating 2,000 lb  source published "49 CFR 393.108" "webbing table, 2 in, unmarked"
}

strap type RatchetStrap4in {
  rating 4,000 lb  source published "49 CFR 393.108" "webbing table, 4 in, unmarked"
}

// Chain, grade 30.

chain type Chain30_1_4in {
  rating 1,300 lb  source published "49 CFR 393.108" "chain table, grade 30, 1/4 in"
}

chain type Chain30_5_16in {
  rating 1,900 lb  source published "49 CFR 393.108" "chain table, grade 30, 5/16 in"
}

chain type Chain30_3_8in {
  rating 2,650 lb  source published "49 CFR 393.108" "chain table, grade 30, 3/8 in"
}

chain type Chain30_7_16in {
  rating 3,700 lb  source published "49 CFR 393.108" "chain table, grade 30, 7/16 in"
}

chain type Chain30_1_2in {
  rating 4,500 lb  source published "49 CFR 393.108" "chain table, grade 30, 1/2 in"
}

chain type Chain30_5_8in {
  rating 6,900 lb  source published "49 CFR 393.108" "chain table, grade 30, 5/8 in"
}

// Chain, grade 43.

chain type Chain43_1_4in {
  rating 2,600 lb  source published "49 CFR 393.108" "chain table, grade 43, 1/4 in"
}

chain type Chain43_5_16in {
  rating 3,900 lb  source published "49 CFR 393.108" "chain table, grade 43, 5/16 in"
}

chain type Chain43_3_8in {
  rating 5,400 lb  source published "49 CFR 393.108" "chain table, grade 43, 3/8 in"
}

chain type Chain43_1_2in {
  rating 9,200 lb  source published "49 CFR 393.108" "chain table, grade 43, 1/2 in"
}

chain type Chain43_5_8in {
  rating 13,000 lb  source published "49 CFR 393.108" "chain table, grade 43, 5/8 in"
}

// Chain, grade 70.

chain type Chain70_1_4in {
  rating 3,150 lb  source published "49 CFR 393.108" "chain table, grade 70, 1/4 in"
}

chain type Chain70_5_16in {
  rating 4,700 lb  source published "49 CFR 393.108" "chain table, grade 70, 5/16 in"
}

chain type Chain70_3_8in {
  rating 6,600 lb  source published "49 CFR 393.108" "chain table, grade 70, 3/8 in"
}

chain type Chain70_7_16in {
  rating 8,750 lb  source published "49 CFR 393.108" "chain table, grade 70, 7/16 in"
}

chain type Chain70_1_2in {
  rating 11,300 lb  source published "49 CFR 393.108" "chain table, grade 70, 1/2 in"
}

chain type Chain70_5_8in {
  rating 15,800 lb  source published "49 CFR 393.108" "chain table, grade 70, 5/8 in"
}

// Chain, grade 80.

chain type Chain80_1_4in {
  rating 3,500 lb  source published "49 CFR 393.108" "chain table, grade 80, 1/4 in"
}

chain type Chain80_5_16in {
  rating 4,500 lb  source published "49 CFR 393.108" "chain table, grade 80, 5/16 in"
}

chain type Chain80_3_8in {
  rating 7,100 lb  source published "49 CFR 393.108" "chain table, grade 80, 3/8 in"
}

chain type Chain80_1_2in {
  rating 12,000 lb  source published "49 CFR 393.108" "chain table, grade 80, 1/2 in"
}

chain type Chain80_5_8in {
  rating 18,100 lb  source published "49 CFR 393.108" "chain table, grade 80, 5/8 in"
}

// Chain, grade 100.

chain type Chain100_1_4in {
  rating 4,300 lb  source published "49 CFR 393.108" "chain table, grade 100, 1/4 in"
}

chain type Chain100_5_16in {
  rating 5,700 lb  source published "49 CFR 393.108" "chain table, grade 100, 5/16 in"
}

chain type Chain100_3_8in {
  rating 8,800 lb  source published "49 CFR 393.108" "chain table, grade 100, 3/8 in"
}

chain type Chain100_1_2in {
  rating 15,000 lb  source published "49 CFR 393.108" "chain table, grade 100, 1/2 in"
}

chain type Chain100_5_8in {
  rating 22,600 lb  source published "49 CFR 393.108" "chain table, grade 100, 5/8 in"
}

// Wire rope, 6 by 37, fiber core.

wire rope type WireRope_1_4in {
  rating 1,400 lb  source published "49 CFR 393.108" "wire rope table, 6 by 37 fiber core, 1/4 in"
}

wire rope type WireRope_5_16in {
  rating 2,100 lb  source published "49 CFR 393.108" "wire rope table, 6 by 37 fiber core, 5/16 in"
}

wire rope type WireRope_3_8in {
  rating 3,000 lb  source published "49 CFR 393.108" "wire rope table, 6 by 37 fiber core, 3/8 in"
}

wire rope type WireRope_1_2in {
  rating 5,300 lb  source published "49 CFR 393.108" "wire rope table, 6 by 37 fiber core, 1/2 in"
}

wire rope type WireRope_5_8in {
  rating 8,300 lb  source published "49 CFR 393.108" "wire rope table, 6 by 37 fiber core, 5/8 in"
}

wire rope type WireRope_3_4in {
  rating 10,900 lb  source published "49 CFR 393.108" "wire rope table, 6 by 37 fiber core, 3/4 in"
}

// A strap whose label is gone or cannot be read. Nothing is presumed for it: the check of its load cannot run.

strap type UnmarkedStrap {
  rating unknown  source unknown
}
`,
  'timber.crib': `// Timbers. A 4x4 is dressed to 3.5 in, a 6x6 to 5.5 in, dry or green. Of an 8x8 two dressed sizes are published: 7.25 in
// dry and 7.5 in green, 6.6 % apart in area. The smaller one stands here, and the policy says which one counts.
//
// Give the length where a timber is used: \`timber Fir4x4 24 in long\`. Crews of heavy rescue mostly carry 24 in.
// Wet timber carries a third less perpendicular to grain: write a timber of your own with the line \`wet\`.

timber Fir4x4 "4x4 Douglas fir" {
  size     4x4
  dressed  3.5 in by 3.5 in  source published "NDS Supplement 2018" "Table 1A, dry"
  species  DouglasFir
}

timber Fir6x6 "6x6 Douglas fir" {
  size     6x6
  dressed  5.5 in by 5.5 in  source published "PS 20 American Softwood Lumber Standard" "timbers of 5 and 6 in: 1/2 in off, dry or green"
  species  DouglasFirTimbers
}

timber Fir8x8 "8x8 Douglas fir" {
  size     8x8
  dressed  7.25 in by 7.25 in  source published "PS 20 American Softwood Lumber Standard" "timbers of 7 in and more: 3/4 in off, dry (1/2 in green)"
  species  DouglasFirTimbers
}

timber Pine4x4 "4x4 southern pine" {
  size     4x4
  dressed  3.5 in by 3.5 in  source published "NDS Supplement 2018" "Table 1A, dry"
  species  SouthernPine
}

timber Pine6x6 "6x6 southern pine" {
  size     6x6
  dressed  5.5 in by 5.5 in  source published "PS 20 American Softwood Lumber Standard" "timbers of 5 and 6 in: 1/2 in off, dry or green"
  species  SouthernPineTimbers
}

timber Spruce4x4 "4x4 spruce-pine-fir" {
  size     4x4
  dressed  3.5 in by 3.5 in  source published "NDS Supplement 2018" "Table 1A, dry"
  species  SprucePineFir
}

timber Spruce6x6 "6x6 spruce-pine-fir" {
  size     6x6
  dressed  5.5 in by 5.5 in  source published "PS 20 American Softwood Lumber Standard" "timbers of 5 and 6 in: 1/2 in off, dry or green"
  species  SprucePineFirTimbers
}

timber HemFir4x4 "4x4 hem-fir" {
  size     4x4
  dressed  3.5 in by 3.5 in  source published "NDS Supplement 2018" "Table 1A, dry"
  species  HemFir
}

timber Oak4x4 "4x4 mixed oak" {
  size     4x4
  dressed  3.5 in by 3.5 in  source published "NDS Supplement 2018" "Table 1A, dry"
  species  MixedOak
}

// A 4x4 that has lain in the rain.
timber WetFir4x4 "4x4 Douglas fir, wet" {
  size     4x4
  dressed  3.5 in by 3.5 in  source published "NDS Supplement 2018" "Table 1A, dry"
  species  DouglasFir
  wet
}

// Metric cribbing. No standard for rescue timber was found; the sizes are heard of (from memory).
timber Spruce100 "100 by 100 mm spruce" {
  size     4x4
  dressed  100 mm by 100 mm  source from memory "sizes in use in Europe"
  species  SprucePineFir
}

timber Spruce150 "150 by 150 mm spruce" {
  size     6x6
  dressed  150 mm by 150 mm  source from memory "sizes in use in Europe"
  species  SprucePineFirTimbers
}
`,
  'vehicles.crib': `// Vehicles to start from. Lengths, widths and axle places of the heavy ones are those of design vehicles in the
// AASHTO Green Book, which highway engineers lay roads out by. Heights of rails and frames, what a part weighs and how
// springy it is are from memory unless a line names its source: measure yours, and write a type over these:
//
//   vehicle type OurTrailer : VanTrailer53 {
//     rails rail { height 41 in  source stated }
//   }
//
// Distances are back from the vehicle's own front. Heights are to the underside of a part.

// ---------------------------------------------------------------- semi-trailers

vehicle type SemiTrailer "semi-trailer" {
  width   8 ft 6 in         source published "AASHTO Green Book 2018" "Table 2-4a, WB vehicles"
  height  13 ft 6 in        source published "AASHTO Green Book 2018" "Table 2-4a, WB vehicles"
  center  45 to 60 in high  source from memory "height of the empty trailer's center"

  rails rail "bottom rail" {
    runs      0 ft to 53 ft
    offset    49 in  source from memory "102 in wide, less the rail"
    height    40 in  source from memory "floor at 48 in (dock height), less floor and rail"
    width     3 in   source from memory
    depth     8 in   source from memory
    may bear  "Clear bolts, lights, mud flaps and hoses first. Rivets show where the joists are."
  }

  joists joists "floor joists" {
    runs      1 ft to 52 ft
    spacing   12 in    source common practice
    offset    47 in    source from memory
    height    40 in    source from memory "as the rail's lower edge"
    width     2.25 in  source from memory
    depth     4 in     source from memory
    may bear  "Only under a joist: the floor between them does not carry."
  }
}

vehicle type VanTrailer53 : SemiTrailer "53 ft van trailer" {
  length 53 ft  source published "AASHTO Green Book 2018" "design vehicle WB-67"

  // 13,000 to 16,000 lb empty is published for vans of this length; how it splits is from memory.
  axle 1 {
    at          46 ft 6 in                 source published "AASHTO Green Book 2018" "design vehicle WB-67: tandem center 45.5 ft behind the kingpin"
    empty       4,000 to 4,800 lb          source from memory
    track       6 ft 5 in                  source from memory "middle of the duals"
    tires       2 each side
    suspension  air
    stiffness   3,000 lb per in each side  source from memory
  }
  axle 2 {
    at          50 ft 6 in                 source published "AASHTO Green Book 2018" "design vehicle WB-67, axles 4.0 ft apart as in WB-62"
    empty       4,000 to 4,800 lb          source from memory
    track       6 ft 5 in                  source from memory "middle of the duals"
    tires       2 each side
    suspension  air
    stiffness   3,000 lb per in each side  source from memory
  }

  points kingpin {
    at            3 ft                                                source published "AASHTO Green Book 2018" "design vehicle WB-67: 3.0 ft behind the trailer's front"
    offset        center
    height        47 in                                               source from memory "fifth wheel height, laden"
    may not bear  "It sits in the fifth wheel."
    carries       5,000 to 6,400 lb empty stiffness 20,000 lb per in  source from memory
  }

  points legs "landing gear" {
    at            9 ft                               source from memory
    offset        3 ft                               source from memory
    height        12 in                              source from memory "raised"
    may not bear  "It holds the trailer up only when it is down and pinned."
    carries       stiffness 20,000 lb per in raised  source from memory
  }
}

vehicle type VanTrailer48 : SemiTrailer "48 ft van trailer" {
  length 48 ft  source published "AASHTO Green Book 2018" "design vehicle WB-62"

  rails rail {
    runs 0 ft to 48 ft
  }
  joists joists {
    runs 1 ft to 47 ft
  }
  axle 1 {
    at          41 ft 6 in                 source published "AASHTO Green Book 2018" "design vehicle WB-62: tandem center 41.0 ft behind the kingpin"
    empty       3,700 to 4,500 lb          source from memory
    track       6 ft 5 in                  source from memory "middle of the duals"
    tires       2 each side
    suspension  air
    stiffness   3,000 lb per in each side  source from memory
  }
  axle 2 {
    at          45 ft 6 in                 source published "AASHTO Green Book 2018" "design vehicle WB-62: axles 4.0 ft apart"
    empty       3,700 to 4,500 lb          source from memory
    track       6 ft 5 in                  source from memory "middle of the duals"
    tires       2 each side
    suspension  air
    stiffness   3,000 lb per in each side  source from memory
  }
  points kingpin {
    at            2 ft 6 in                                           source published "AASHTO Green Book 2018" "design vehicle WB-62: 2.5 ft behind the trailer's front"
    offset        center
    height        47 in                                               source from memory "fifth wheel height, laden"
    may not bear  "It sits in the fifth wheel."
    carries       4,600 to 5,800 lb empty stiffness 20,000 lb per in  source from memory
  }
  points legs "landing gear" {
    at            8 ft 6 in                          source from memory
    offset        3 ft                               source from memory
    height        12 in                              source from memory "raised"
    may not bear  "It holds the trailer up only when it is down and pinned."
    carries       stiffness 20,000 lb per in raised  source from memory
  }
}

vehicle type FlatTrailer48 : VanTrailer48 "48 ft flat trailer" {
  height  5 ft              source from memory "deck"
  center  36 to 48 in high  source from memory "height of the empty trailer's center"

  rails frame "main beams" {
    runs    1 ft to 47 ft
    offset  19 in  source from memory
    height  34 in  source from memory
    width   6 in   source from memory
    depth   18 in  source from memory
    may bear
  }
}

// ---------------------------------------------------------------- tractors

vehicle type Tractor "tractor" {
  width   8 ft              source from memory
  height  13 ft             source from memory
  center  38 to 46 in high  source from memory "height of the empty tractor's center"

  rails frame "frame rails" {
    runs      1 ft 6 in to 27 ft
    offset    17 in  source from memory "rails 34 in apart"
    height    30 in  source from memory "top at 40 in, rails 10 in deep"
    width     3 in   source from memory
    depth     10 in  source from memory
    may bear  "Clear brackets, air lines and the fuel tank's straps."
  }
}

// A cab on rubber mounts in front and air springs behind: it rides on air until it rests on timber.
vehicle type SleeperTractor : Tractor "three-axle tractor, sleeper cab on air springs" {
  length 28 ft  source from memory

  axle 1 {
    at          4 ft                       source published "AASHTO Green Book 2018" "design vehicle WB-67: front overhang 4.0 ft"
    empty       10,000 to 11,000 lb        source from memory
    track       6 ft 8 in                  source from memory
    tires       1 each side
    suspension  spring
    stiffness   2,500 lb per in each side  source from memory
  }
  axle 2 {
    at          21 ft 5 in                 source published "AASHTO Green Book 2018" "design vehicle WB-62: first drive axle 17.4 ft behind the steer axle"
    empty       4,000 to 4,700 lb          source from memory
    track       6 ft                       source from memory "middle of the duals"
    tires       2 each side
    suspension  air
    stiffness   2,500 lb per in each side  source from memory
  }
  axle 3 {
    at          25 ft 7 in                 source published "AASHTO Green Book 2018" "design vehicle WB-62: tractor tandem 4.2 ft apart"
    empty       4,000 to 4,700 lb          source from memory
    track       6 ft                       source from memory "middle of the duals"
    tires       2 each side
    suspension  air
    stiffness   2,500 lb per in each side  source from memory
  }

  cab {
    runs    5 ft to 15 ft                                                         source from memory
    weight  3,500 to 4,500 lb                                                     source from memory
    center  9 ft to 11 ft back, 75 to 85 in high                                  source from memory
    mount   front-mounts at 6 ft, offset 17 in, rigid stiffness 20,000 lb per in  source from memory
    mount   air-springs at 14 ft 6 in, offset 15 in, air stiffness 500 lb per in  source from memory
  }

  area floor "cab floor" {
    runs      7 ft to 15 ft  source from memory
    offset    30 in          source from memory
    height    58 in          source from memory
    depth     6 in           source from memory
    may bear  "On the cab's cross sills, not on sheet metal between them."
    moves
  }
}

vehicle type DayCabTractor : Tractor "three-axle tractor, day cab" {
  length 23 ft  source from memory

  rails frame {
    runs 1 ft 6 in to 22 ft 6 in
  }
  axle 1 {
    at          4 ft                       source from memory
    empty       9,500 to 10,500 lb         source from memory
    track       6 ft 8 in                  source from memory
    tires       1 each side
    suspension  spring
    stiffness   2,500 lb per in each side  source from memory
  }
  axle 2 {
    at          17 ft                      source from memory
    empty       3,300 to 4,000 lb          source from memory
    track       6 ft                       source from memory "middle of the duals"
    tires       2 each side
    suspension  air
    stiffness   2,500 lb per in each side  source from memory
  }
  axle 3 {
    at          21 ft 4 in                 source from memory
    empty       3,300 to 4,000 lb          source from memory
    track       6 ft                       source from memory "middle of the duals"
    tires       2 each side
    suspension  air
    stiffness   2,500 lb per in each side  source from memory
  }
}

// ---------------------------------------------------------------- straight trucks

vehicle type StraightTruck "two-axle straight truck with a box" {
  length  30 ft             source published "AASHTO Green Book 2018" "Table 2-4a, SU-30"
  width   8 ft              source published "AASHTO Green Book 2018" "Table 2-4a, SU-30"
  height  12 ft             source published "AASHTO Green Book 2018" "Table 2-4a, SU-30: 11 to 13.5 ft"
  center  40 to 50 in high  source from memory "height of the empty truck's center"

  axle 1 {
    at          4 ft                       source published "AASHTO Green Book 2018" "Table 2-4a, SU-30: front overhang 4.0 ft"
    empty       6,500 to 7,500 lb          source from memory
    track       6 ft 8 in                  source from memory
    tires       1 each side
    suspension  spring
    stiffness   2,000 lb per in each side  source from memory
  }
  axle 2 {
    at          24 ft                      source published "AASHTO Green Book 2018" "Table 2-4a, SU-30: rear overhang 6.0 ft"
    empty       6,000 to 7,000 lb          source from memory
    track       6 ft                       source from memory "middle of the duals"
    tires       2 each side
    suspension  spring
    stiffness   4,000 lb per in each side  source from memory
  }

  rails frame "frame rails" {
    runs      2 ft to 29 ft
    offset    17 in  source from memory "rails 34 in apart"
    height    30 in  source from memory
    width     3 in   source from memory
    depth     10 in  source from memory
    may bear  "Clear brackets, air lines and the fuel tank's straps."
  }
  rails rail "body bottom rail" {
    runs      9 ft to 30 ft
    offset    46 in  source from memory
    height    40 in  source from memory
    width     3 in   source from memory
    depth     5 in   source from memory
    may bear  "Clear lights and mud flaps first."
  }
  joists joists "body joists" {
    runs      10 ft to 29 ft
    spacing   12 in    source common practice
    offset    45 in    source from memory
    height    40 in    source from memory
    width     2.25 in  source from memory
    depth     4 in     source from memory
    may bear  "Only under a joist."
  }
}

// ---------------------------------------------------------------- cars

vehicle type Car "car" {
  width   6 ft              source from memory
  height  57 in             source from memory
  center  20 to 23 in high  source from memory

  rails rocker "rocker panels" {
    runs    4 ft to 11 ft
    offset  30 in  source from memory
    height  8 in   source from memory
    width   4 in   source from memory
    depth   5 in   source from memory
    may bear
  }
  area roof {
    runs          5 ft to 10 ft
    offset        24 in
    height        57 in  source from memory
    may not bear  "Sheet metal. It holds what rests on it only until it folds."
  }
}

vehicle type Sedan : Car "sedan" {
  length 15 ft 6 in  source from memory
  axle 1 {
    at          3 ft                       source from memory
    empty       1,800 to 2,200 lb          source from memory
    track       5 ft                       source from memory
    tires       1 each side
    suspension  spring
    stiffness   1,000 lb per in each side  source from memory "tire, with the spring run out of travel"
  }
  axle 2 {
    at          12 ft                      source from memory
    empty       1,200 to 1,600 lb          source from memory
    track       5 ft                       source from memory
    tires       1 each side
    suspension  spring
    stiffness   1,000 lb per in each side  source from memory "tire, with the spring run out of travel"
  }
}

vehicle type Suv : Car "sport utility vehicle" {
  length  16 ft             source from memory
  width   6 ft 6 in         source from memory
  height  70 in             source from memory
  center  25 to 29 in high  source from memory

  rails rocker {
    offset  33 in  source from memory
    height  12 in  source from memory
  }
  area roof {
    height 70 in  source from memory
  }
  axle 1 {
    at          3 ft                       source from memory
    empty       2,200 to 2,800 lb          source from memory
    track       5 ft 6 in                  source from memory
    tires       1 each side
    suspension  spring
    stiffness   1,200 lb per in each side  source from memory "tire, with the spring run out of travel"
  }
  axle 2 {
    at          12 ft 6 in                 source from memory
    empty       2,000 to 2,600 lb          source from memory
    track       5 ft 6 in                  source from memory
    tires       1 each side
    suspension  spring
    stiffness   1,200 lb per in each side  source from memory "tire, with the spring run out of travel"
  }
}
`,
};
