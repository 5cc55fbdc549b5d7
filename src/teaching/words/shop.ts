import { BARS, type CheckLesson, MONEY, PICTURE } from './check-lesson.ts';

const TRADES =
  'Rigging, floors and electricity are for licensed people and by local code; this number prepares the talk with them.';

/** The checks of the shop. */
export const SHOP_LESSONS = {
  bay: {
    plain:
      'A machine needs room to be opened, fed and repaired: service space on each side. Machine and service space together have to go into the bay, one way round or the other.',
    mistake:
      'To measure the machine only. Doors, chip carts and the electrician’s way to the cabinet take more than a meter each.',
    careful: 'Ways of escape and room before a cabinet are set by local code.',
    sketch: PICTURE,
  },
  ceiling: {
    plain:
      'Above the machine room is needed for lifting lids and motors. A spacer under the column makes the machine taller.',
    mistake: 'To measure to the ceiling and forget lamps, pipes and the crane.',
    careful: TRADES,
    sketch: BARS,
  },
  doorway: {
    plain:
      'A machine comes in on skates, its narrower side ahead, and is never laid down. The narrowest opening on the whole way counts, with room for hands beside it.',
    mistake: 'To measure the gate and forget the corner behind it.',
    careful: 'Machines tip over on skates. Moving them is work for riggers.',
    sketch: PICTURE,
  },
  'floor-load': {
    plain:
      'Weight over area is pressure. Spread over the whole footprint it is a first look only: a machine stands on feet, and under a foot the pressure is many times larger.',
    mistake: 'To take the mean for the answer. A structural engineer looks at the slab and at the feet.',
    careful: TRADES,
    sketch: BARS,
  },
  power: {
    plain:
      'The supply has to give what the machine takes, on as many phases and at its voltage. Other phases take a converter, another voltage a transformer, and both cost money and room.',
    mistake:
      'To add up motors. The plate of the machine tells its connected load; what is free in the panel only an electrician knows.',
    careful: TRADES,
    sketch: BARS,
  },
  air: {
    plain:
      'Machines clean tapers and hold brakes with air. It has to come in the amount and at the pressure that the greater of machine and rotary asks for.',
    mistake: 'To read the size of the tank. What counts is what the compressor gives, all the time.',
    careful: 'Some brakes are held by air. Ask what happens to a tilted table when the air fails.',
    sketch: BARS,
  },
  lift: {
    plain:
      'A rotary that shares the machine with vises comes off and goes on again, many times a year. Hands, forklift or hoist have to lift it with its plate. People lift little when the arms are stretched over a table. A forklift lifts less the farther out the load sits. A hoist carries its own rigging too.',
    mistake: 'To believe that two people lift twice what one lifts, or that a hoist’s rating is all load.',
    careful:
      'Lifting inside an enclosure is not what the lifting equation was made for. Eye bolts lose most of their rating at an angle. Local code and trained people decide.',
    sketch: BARS,
  },
  'hook-height': {
    plain:
      'Hanging from its sling, the rotary has to come over the sill of the door and over the table. The sling takes height, the flatter it is the less, but a flat sling pulls much harder on its legs.',
    mistake: 'To compare the hook with the table only. The sill of the door is often higher.',
    careful: 'Nobody stands under a load. Slings, eye bolts and their angles are for trained people.',
    sketch: BARS,
  },
  budget: {
    plain:
      'Machine, rotary, additions, plates, drives, required features, rigging and training together are what has to be paid.',
    mistake: 'To compare prices of rotaries. What makes them work on this machine often costs as much.',
    sketch: MONEY,
  },
} as const satisfies Readonly<Record<string, CheckLesson>>;
