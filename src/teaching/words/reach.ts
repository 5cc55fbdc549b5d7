import { BARS, type CheckLesson, PICTURE } from './check-lesson.ts';

/** The checks of reach and clearance. */
export const REACH_LESSONS = {
  'travel-x': {
    plain:
      'On three axes the part has to lie within the travel. Here the part leans and turns, and the tool has to follow: to the side for a side face, beyond the edge by half a cutter. All the places where its tip comes, from every direction together, make up the width that the travel has to give, and it has to give it on both sides of where the rotary stands.',
    mistake:
      'To compare part and travel, and put the rotary to the end of the table to save room for vises. What is enough in all may be too little on one side.',
    sketch: BARS,
  },
  'travel-y': {
    plain:
      'The same along the depth of the table. With the tilt axis along the table the part leans toward the door or the column, so that its side faces come to lie far from the rotary center, by the whole height of fixture and part. That is often more than the part itself is wide.',
    mistake:
      'To forget that tilting moves the work. A face that is cut at a right angle lies beside the table, as far out as the part is tall.',
    sketch: BARS,
  },
  'reach-high': {
    plain:
      'Faceplate, fixture and part stand on top of the rotary, and the tool hangs down from the nose. All of it has to go between the table and the nose at its highest: the highest place where the tip comes, some clearance, and the longest tool. A rotary takes much of that room away. The table can sometimes be lowered, or the column raised; both lift the nose at the top and at the bottom alike.',
    mistake:
      'To count with the longest tool only where it cuts. It also has to be brought in over the work, so the highest place and the longest tool count together.',
    careful: 'Crashes happen on the way in. Check the clearance plane after every change of tool or fixture.',
    sketch: PICTURE,
  },
  'reach-low': {
    plain:
      'The nose does not come down to the table: at the bottom of its travel a gap is left. Short tools do not bridge it. Held low in a cradle, or after the nose was raised, a part can be out of reach from above. Then a longer tool does it, or a riser under the rotary.',
    mistake:
      'To cure a lack of height with a column spacer and not to look below. What is won at the top is lost at the bottom, also for the vises when the rotary is off.',
    sketch: PICTURE,
  },
  'index-clear': {
    plain:
      'While the table tilts, a corner of the work rises before it comes down, higher than it ever stands in a cut: a box that is tipped on its edge is taller than it was. With a tool in the spindle above it that corner has to pass. Where it does not, the tool must move aside before the table tilts, which takes time at every index. Axes that move in the cut cannot do that.',
    mistake: 'To check the positions in which it is cut, and not the way between them.',
    careful: 'Retract to a safe place before every index, in the program and not by habit.',
    sketch: PICTURE,
  },
  'table-clear': {
    plain:
      'One side of the work goes up as it tilts, the other comes down. The lowest corner, and the edge of the faceplate itself, must not reach the machine table. A riser under the rotary gives room, and takes it from the reach above.',
    mistake: 'To look at the part only. A large faceplate or fixture comes down farther than the part does.',
    careful: 'Tilt a new setup in single steps, and look from the side.',
    sketch: PICTURE,
  },
  'housing-clear': {
    plain:
      'Beside the faceplate of many rotaries a motor housing stands up. When the tool works near it, the spindle nose, which is much wider than the tool, comes over it. The nose hangs by the length of the tool above its tip, so a longer tool is what helps.',
    mistake: 'To check the tool and not the nose. The tool passes; the nose is what meets the housing.',
    careful:
      'An outline from a drawing is no measurement. Measure the housing with its plugs before the first program.',
    sketch: BARS,
  },
} as const satisfies Readonly<Record<string, CheckLesson>>;
