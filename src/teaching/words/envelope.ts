import { BARS, type CheckLesson, CIRCLES, PICTURE } from './check-lesson.ts';

/** The checks of the work envelope. */
export const ENVELOPE_LESSONS = {
  swing: {
    plain:
      'Lay the part on a turntable and turn it once. Its corners draw a circle, and that circle is what has to fit, not the length and the width on the drawing: a square part needs its diagonal. The fixture turns too, so the wider of the two counts. A part that stands off the middle draws a larger circle still. Where the axis lies level, as on an indexer, the circle must also stay off the machine table below it.',
    mistake:
      'To hold the longer side of the part against the swing. The corner is farther out than any side, and the fixture, its screws and its clamps are often farther out than the part.',
    careful:
      'What turns outside its room hits something that stands still. Turn a new setup slowly by hand or in single steps first, with nobody reaching in.',
    sketch: PICTURE,
  },
  faceplate: {
    plain:
      'The faceplate is what the part or its fixture is bolted to. A part that stands over its edge is not supported there. That can be made good with a fixture that is stiff enough to carry the overhang, as long as all of it still turns within the swing.',
    mistake:
      'To take the faceplate for the limit of size. It is the limit of support: over it a rigid fixture is needed, and the limit of size is the swing.',
    careful:
      'A plate that overhangs gives way under the cut. Clamp by the fixture builder’s numbers, not by feel.',
    sketch: CIRCLES,
  },
  collet: {
    plain:
      'A collet closes evenly around a bar, and it can close around a bar only that goes into it. The largest bar that the maker names is the limit. Where a rotary takes no collet, a bar has to be held in another way.',
    mistake:
      'To forget that a collet is made for one size: it closes by a few tenths, not by millimeters. Each bar size needs its own.',
    sketch: CIRCLES,
  },
  payload: {
    plain:
      'A table carries more while it is level than while it leans, because a leaning load pulls on bearings and brake. Makers therefore name two masses. Part and fixture together are held against the one that belongs to the tilt that is used. On a level axis the faceplate stands on edge from the first, so there it is always the smaller one.',
    mistake:
      'To weigh the finished part and forget blank and fixture. The blank is the heaviest that the table ever carries, and a steel fixture is often heavier than the part.',
    careful:
      'A table that tilts can drop when a brake lets go or power is lost. Keep hands and heads out from under it, and lock out electricity, air and weight before reaching in.',
    sketch: BARS,
  },
  inertia: {
    plain:
      'Mass that sits far out resists being turned. It does not change whether the part can be held, but how fast the table can start and stop. Distance counts twice over: the same mass twice as far out resists four times as much. Makers publish a limit or they do not; where they do not, ask.',
    mistake:
      'To look at the mass alone. A light wide plate can resist more than a heavy short block, and a part that stands off the axis more than either.',
    careful: 'Unbalanced work shakes at speed. Turn it slowly until it is balanced or proven.',
    sketch: BARS,
  },
} as const satisfies Readonly<Record<string, CheckLesson>>;
