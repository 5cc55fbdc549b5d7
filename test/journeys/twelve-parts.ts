/**
 * A list of twelve parts as it is copied out of a spreadsheet: headings, millimeters and inches side by side, commas and
 * points, fractions, and two mistakes: a material that nobody knows, and a height in pounds. Parts and numbers are invented.
 */
const HEADINGS = [
  'Name',
  'Shape',
  'Length (mm)',
  'Width (mm)',
  'Height (mm)',
  'Diameter (mm)',
  'Material',
  'Sides that are cut',
  'Bottom',
  'How it stands',
  'Motion',
  'Depth from the top (mm)',
  'Depth from the sides (mm)',
  'Lowest cut on a side (mm)',
  'Slant angle',
  'Tolerance (mm)',
  'Must be held',
  'Held by',
  'Width of what holds it (mm)',
  'Height of what holds it (mm)',
  'Mass of what holds it (kg)',
  'Off center',
  'Heaviest cut',
  'Large drilled hole',
  'Pieces a year',
  'Lots a year',
  'Setups',
  'Minutes a setup',
  'Cycle minutes',
  'Handling minutes',
];

// biome-ignore format: a row of the table each
const ROWS = [
  'Rudder hinge|block|95|60|52||brass|top, sides|yes||positional|25|18|8||0.08|yes|vise|150|70|12|0|medium|no|1440|40|5|30|12|1.5',
  'Cleat base|block|4 in|2-1/2 in|1,5 in||wrought aluminum|top, sides|no||positional|12|15|8||0.1|no|vise|150|70|12|0|medium|no|600|20|4|30|9|1.5',
  'Valve spindle|round|55|||24|stainless steel|around|no|upright|positional||8|12||0.08|no|collet|80|50|3|0|light|no|2880|26|2|25|6|1',
  'Sampling body|round|105|||96|stainless steel|around|no|upright|positional||30|15||0.1|no|chuck|125|65|7.5|0|light|no|670|31|3|35|22|2',
  'Winch pawl|block|80|45|1 in||carbon steel|top, sides|no||positional|10|12|6||0.1|no|vise|150|70|12|0|light|no|480|16|4|30|8|1',
  'Gland nut|round|40|||2-3/8 in|bronze-ish|around|no|upright|positional||10|8||0.1|no|chuck|125|65|16.5 lb|0|light|no|900|24|3|25|7|1',
  'Spray nozzle head|round|58|||72|stainless steel|top, slant|no|upright|positional|20|||35, 60|0.1|no|chuck|125|65|7.5|0|light|no|960|22|3|40|10|1.5',
  'Fairlead|block|130|80|58 lb||cast aluminum|top, sides|yes||positional|20|15|10||0.12|no|fixture|150|55|6|0|medium|no|380|18|5|45|22|2',
  'Hatch lever|block|110|40|25||wrought aluminum|top, sides|no||positional|15|10|6||0.1|no|vise|150|70|12|0|light|no|800|25|4|25|6|1',
  'Pump cover|round|35|||110|gray iron|top, around|no|upright|positional|12|10|8||0.1|no|chuck|125|65|7.5|0|light|no|300|12|3|30|12|1.5',
  'Strainer boss|round|50|||70|stainless steel|around|no|upright|positional||12|10||0.1|no|chuck|125|65|7.5|0|light|no|260|12|3|30|11|1',
  'Bilge manifold|block|120|70|60||cast aluminum|top, sides|yes||positional|30|20|10||0.1|no|vise|150|70|12|0|medium|no|220|11|5|40|18|2',
];

export const TWELVE_PARTS = [HEADINGS.join('\t'), ...ROWS.map((row) => row.replaceAll('|', '\t'))].join(
  '\r\n',
);
