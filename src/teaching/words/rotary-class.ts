import { BARS, type CheckLesson, CORNER, YES_OR_NO } from './check-lesson.ts';

const HOLDS_BY_BRAKE =
  'Forces of the cut are estimates for sharp tools; a worn one asks for a third to a half more. Prove a heavy cut out dry, then with small depths.';

/** The checks of the kind of rotary: how it tilts, holds and places. */
export const ROTARY_CLASS_LESSONS = {
  'tilt-range': {
    plain:
      'The direction from which a tool comes is told by its angle from the axis of the part: from the top it is nothing, from a side a right angle, from below a side more. The table has to tilt by the greatest of these angles. It may tilt to either side, because a part can be turned half round. One level axis does not tilt at all: it reaches what lies around it and nothing else.',
    mistake:
      'To count the sides instead of the angles. Five sides are reached by a right angle; one hole that leans past the level asks for more than all five of them.',
    sketch: YES_OR_NO,
  },
  'tilt-swing': {
    plain:
      'While the table tilts, every corner of part and fixture travels on a circle about the tilt axis. The corner that is farthest from that axis draws the largest circle, and beside it stand the cradle or the bearing of the table. The distance follows from two sides of a triangle: how far the corner stands out, and how high it stands above the tilt axis.',
    mistake:
      'To measure from the faceplate. The tilt axis may lie above or below it, and a tall fixture brings the part away from the axis faster than a wide part does.',
    careful: 'Tilt a new setup in single steps with the feed turned down, and nobody reaching in.',
    sketch: CORNER,
  },
  'tilt-moment': {
    plain:
      'A leaning part hangs on the tilt axis like a bucket on a broomstick: its weight times how far it hangs out. Upright it does not pull at all; lying it pulls most. A part that stands off the rotary axis pulls even while the table is level. Where its center lies in the tilt axis, as in a sunk cradle, there is nothing left to pull. The bearing has to carry the most that occurs on the way.',
    mistake:
      'To check the payload and stop there. A light part on a tall fixture can be within the payload and far beyond the moment.',
    careful:
      'An axis that is loaded beyond its moment can drop on brake release or power loss, and crush. Never home with a tool in the work.',
    sketch: BARS,
  },
  'brake-rotary': {
    plain:
      'The tool pushes sideways on the part. At the edge of the part that push works on the rotary axis like a hand on a spanner: force times distance. While the table stands, a brake holds against it. The force is taken at its peak and multiplied by a safety factor, larger where the cut is interrupted, because a brake that slips once has spoiled the part.',
    mistake:
      'To take the mean force of the cut from a power table. Teeth come one by one, and the brake has to hold against the peak of each.',
    careful: HOLDS_BY_BRAKE,
    sketch: BARS,
  },
  'brake-tilt': {
    plain:
      'About the tilt axis the cut has a longer lever, the distance to the farthest corner, and the weight of the work pulls the same way. The brake of the tilt axis has to hold both together. A drill that presses beside the axis counts too.',
    mistake:
      'To compare the brake torque with the cut alone. The weight is there before the tool touches, and a tall part makes both larger.',
    careful: HOLDS_BY_BRAKE,
    sketch: BARS,
  },
  'drive-rotary': {
    plain:
      'In simultaneous work the axis turns while it cuts, so no brake helps: the motor has to hold against the cut. Motors hold far less than brakes do. Only the cut that is made while the axes move counts here, usually a light finishing cut.',
    mistake:
      'To read the brake torque in the data sheet and take it for both. Drive torque is another, smaller number, and it is often not printed at all: ask for it.',
    careful: HOLDS_BY_BRAKE,
    sketch: BARS,
  },
  'drive-tilt': {
    plain:
      'The same for the axis that tilts: while it moves in the cut its motor carries the weight of the leaning work and holds against the tool at the same time.',
    mistake:
      'To forget the weight. A motor that could move against the cut may be used up by the part alone once it leans.',
    careful: HOLDS_BY_BRAKE,
    sketch: BARS,
  },
  'index-accuracy': {
    plain:
      'Two faces that are cut in one clamping are only as true to each other as the table turns. A small error of angle becomes a length at the edge of the part: the farther out, the larger. The place of the axes is known only so well, and half a turn doubles that error. The machine adds its own. Errors that have nothing to do with each other are added as squares under a root, and may use up a share of the tolerance.',
    mistake:
      'To compare the angle in the data sheet with the tolerance. The center of rotation that somebody found by hand usually spoils more than the table does, and a probe in the spindle halves it.',
    sketch: BARS,
  },
  'rotary-speed': {
    plain:
      'To move along a contour at a feed, the edge of the part has to pass the tool at that feed. Close to the axis the table must turn fast for it: at half the radius twice as fast. Feed over the length of the circle gives the turns in a minute.',
    mistake:
      'To look at the largest radius. It is the smallest one, nearest to the axis, that asks for speed.',
    careful: 'Unbalanced work shakes at speed, and what comes loose flies. Guard it and balance it.',
    sketch: BARS,
  },
  tailstock: {
    plain:
      'A bar that is held at one end bends under the tool and sings. As a rule of the trade it may stand out by a few times its own thickness. Longer work is carried at its far end by a tailstock or a steady, and that needs its room in a row on the table.',
    mistake:
      'To plan the tailstock and forget the table. Rotary, work and tailstock stand in one row, and that row has to fit.',
    careful: 'Long work that whips can leave its holding. Support it before it turns.',
    sketch: BARS,
  },
} as const satisfies Readonly<Record<string, CheckLesson>>;
