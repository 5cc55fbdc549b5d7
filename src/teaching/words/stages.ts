import type { StageId } from '../../rules/stages/index.ts';

/** A stage of the decision as it is taught. No digits: numbers are worked out. */
export interface StageLesson {
  readonly plain: string;
  readonly mistake: string;
}

/** Every stage as it is taught. A new id does not compile without. */
export const STAGE_LESSONS: Readonly<Record<StageId, StageLesson>> = {
  envelope: {
    plain:
      'First the size and the weight of the work, because nothing else helps where the part does not fit. What is too small or too weak here is not looked at again.',
    mistake: 'To size for the largest part of all. A family that is seldom made may be left to three axes.',
  },
  'rotary-class': {
    plain:
      'Then the kind: does it bring every side under the tool, does it hold against cut and weight, and do the faces come out true to each other?',
    mistake: 'To choose the kind by habit or by price before the sides of the parts are counted.',
  },
  fit: {
    plain:
      'Then the two together: it has to stand on this table, and this spindle has to reach all of the work and have the power for it.',
    mistake: 'To choose rotary and machine apart from each other. Each may be right and the pair wrong.',
  },
  clearance: {
    plain:
      'Height is what a rotary uses up. Here the room above the work is looked at, with what the machine offers to gain more of it, and what that costs below.',
    mistake: 'To find out at the first program that the longest tool does not come in.',
  },
  features: {
    plain: 'Then the control: drives for each axis, and what the motion of the parts requires.',
    mistake: 'To take the list of options for a list of wishes. Some are required; most can wait.',
  },
  shop: {
    plain: 'Last the shop itself: way in, floor, power, air, lifting and money.',
    mistake: 'To ask the riggers after the order.',
  },
};
