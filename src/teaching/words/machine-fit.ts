import { BARS, type CheckLesson, YES_OR_NO } from './check-lesson.ts';

/** The checks of the rotary on the table, of the spindle and of the control. */
export const MACHINE_LESSONS = {
  'table-footprint': {
    plain:
      'The base of the rotary stands on the machine table like a vise. It may be longer than the table is deep. A little overhang is common, as long as all its bolts stand on the table and enough of the base bears on it.',
    mistake:
      'To measure the faceplate. The base with its housing is longer, and which way it is mounted decides over which edge it stands.',
    careful:
      'What stands over the edge is where people walk and where the guard ends. Look at doors and guards.',
    sketch: BARS,
  },
  'slot-match': {
    plain:
      'Keys under the base go into one slot and line it up; bolts go into slots beside it. Widths have to be the same, and the bolts have to lie over slots: their distance must be a whole number of slot spaces. Where it is not, a plate with both patterns goes between, and costs its thickness in height.',
    mistake: 'To take slots for a standard. Widths are, distances are the builder’s own.',
    careful: 'Never hold a rotary by clamps at its edge instead of its bolts.',
    sketch: YES_OR_NO,
  },
  'table-load': {
    plain:
      'Everything that stands on the machine table counts: rotary, plates, fixture and part. On a small machine the rotary alone can use up most of it.',
    mistake: 'To think of the part only, as one is used to from vises.',
    careful: 'A table beyond its load wears out its ways, and stops later than it should.',
    sketch: BARS,
  },
  column: {
    plain:
      'Behind the spindle stands the column. When the tool works at the front of the part, everything behind reaches toward it: the work, the base, and the housing with plugs and hoses. That depth has to be smaller than the throat, the distance from spindle axis to column.',
    mistake: 'To forget the plugs. Connectors and hoses at the rear take a hand’s breadth or two.',
    careful: 'Squeezed cables fail later, and then at the worst moment. Leave them room to move.',
    sketch: BARS,
  },
  'tool-length': {
    plain:
      'To mill low on a side the tool has to get past the edge of faceplate or fixture, and above it comes the nose, which is wide. Either the place is high enough for half a nose to pass, or the tool is long enough to reach in from outside the edge. A tool that comes from below the level needs the part to stand high enough for its flank.',
    mistake:
      'To build the fixture as low as it can be. That is right for the moment and wrong for the reach: on a wide faceplate the part has to stand up.',
    careful: 'Long tools bend and sing, and break. Halve the cut when the length doubles.',
    sketch: BARS,
  },
  'spindle-power': {
    plain:
      'Chips take power: volume in a minute times the force that the material asks for. Some of what the motor gives is lost on the way to the tool.',
    mistake:
      'To read the peak power off the sheet. It is given for minutes; the rated power is what a long cut has.',
    sketch: BARS,
  },
  'spindle-torque': {
    plain:
      'Power is torque times speed, so a slow large cutter asks for torque. At low speed the spindle gives its rated torque and not more, at high speed what its power leaves.',
    mistake:
      'To compare torque at the wrong speed. The largest number of the sheet holds only below the base speed.',
    sketch: BARS,
  },
  'spindle-speed': {
    plain:
      'A cutting speed at the edge of a tool asks for turns: the smaller the tool, the more. The spindle has to reach them.',
    mistake: 'To buy speed for a tool that is seldom used, and pay for it with torque.',
    careful: 'Every tool and holder has a greatest speed of its own, often lower than that of the spindle.',
    sketch: BARS,
  },
  'axis-drives': {
    plain:
      'Each rotary axis is a motor that the control has to drive. A machine comes with drives, or offers them; without one for each axis the rotary is a weight on the table.',
    mistake:
      'To ask whether the control “can do five axes”. Ask what is fitted, what it costs, and how many axes move at once.',
    careful: 'Wiring of drives is work for licensed people, by local code.',
    sketch: YES_OR_NO,
  },
  'tool-center-point': {
    plain:
      'When axes turn while cutting, the tip of the tool would swing away with them. A control with tool center point control moves the other axes along, so that the tip stays on its path whatever turns. Simultaneous work needs it.',
    mistake: 'To order it for work whose axes stand braked while they cut. That does not need it.',
    sketch: YES_OR_NO,
  },
  'rotating-work-offset': {
    plain:
      'A program thinks that the part sits where it was placed in the drawing. Loaded by hand it sits a little beside. When the table turns, that little moves with it. The control has to turn the offset along, or every part has to be set exactly.',
    mistake: 'To correct the offset in one position only, and wonder about the second face.',
    sketch: YES_OR_NO,
  },
  'tilted-work-plane': {
    plain:
      'With it, a leaning face is programmed as if it lay flat: the control turns the coordinates. Without it the programming system has to do that for one place of the part, and the part has to be in that place.',
    mistake: 'To take it for simultaneous motion. It is for axes that stand still while cutting.',
    sketch: YES_OR_NO,
  },
  'look-ahead': {
    plain:
      'A fine curve is written as many short straight moves. The control has to read and work them off fast enough, and read so far ahead that the axes can brake before a corner. Short moves at a high feed ask for many of them every second.',
    mistake:
      'To blame the machine for slow surfaces. Often the control cannot read the path as fast as the axes could run it.',
    sketch: BARS,
  },
} as const satisfies Readonly<Record<string, CheckLesson>>;
