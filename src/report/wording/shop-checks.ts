import { check } from './check-words.ts';

/** The checks of the shop: can it be brought in, stood, wired, lifted and paid. */
export const SHOP_CHECKS = {
  bay: check(
    'bay',
    'The bay takes the machine',
    'The machine with its service space on every side must go into the bay, one way round or the other.',
    'side of machine and service space',
    'side of the bay',
  ),
  ceiling: check(
    'ceiling',
    'The machine stands under the ceiling',
    'The machine, with a spacer under its column where there is one, needs room above it.',
    'height with the room above',
    'ceiling',
  ),
  doorway: check(
    'doorway',
    'The machine comes through the doorway',
    'As shipped and on skates the machine must pass the narrowest opening on the way in; it is never laid down.',
    'opening needed',
    'opening',
  ),
  'floor-load': check(
    'floor load',
    'The floor carries it',
    'Machine, rotary and work press on the floor; what a slab takes, and under the feet, is for a structural engineer to say.',
    'pressure on the floor',
    'rating of the floor',
  ),
  power: check(
    'power supply',
    'The supply feeds the machine',
    'The connected load, the phases and the voltage of the machine must suit the supply, or be made to.',
    'what the machine asks for',
    'what the supply gives',
  ),
  air: check(
    'compressed air',
    'The compressor feeds it',
    'The machine takes air at a pressure, and the rotary may want a higher one.',
    'air needed',
    'air of the compressor',
  ),
  lift: check(
    'lifting the rotary',
    'The rotary can be lifted off and on',
    'Hands, forklift or hoist must take the rotary with its plate off the table, or it stays on and three-axis work lives beside it.',
    'rotary with its plate',
    'most that can be lifted',
  ),
  'hook-height': check(
    'height of the hook',
    'The hook comes high enough',
    'Hanging from its sling the rotary has to pass the door sill and come over the table.',
    'height needed under the hook',
    'height of the hook',
  ),
  budget: check(
    'budget',
    'The budget pays for it',
    'Machine, rotary and everything that has to be added may cost no more than the budget.',
    'price of all of it',
    'budget',
  ),
} as const;
