/** What no common data sheet says: to be answered by the seller in writing. */
export interface QuoteQuestion {
  readonly about: string;
  readonly asks: string;
}

/** To whoever sells the machine. */
export const MACHINE_QUESTIONS: readonly QuoteQuestion[] = [
  {
    about: 'Axes of the rotary on the control',
    asks: 'Which motors, which position feedback, which brake signal and which plugs does the control take for the rotary, who connects them, and who answers for it when they do not work together?',
  },
  {
    about: 'Axes that move together',
    asks: 'How many axes can the control move at the same time, with the options that are ordered?',
  },
  {
    about: 'Tool changer',
    asks: 'Does the tool changer clear the rotary and the highest work with the longest tool in its arm, wherever the axes stand?',
  },
  {
    about: 'Doors and enclosure',
    asks: 'Do doors and enclosure clear the rotary and the work at every tilt and at both ends of the travels, also where the rotary stands over the edge of the table?',
  },
  {
    about: 'Tools',
    asks: 'What may a tool weigh, how long and how thick may it be beside full neighbors, and does the holder clear a fixture beside low features?',
  },
  {
    about: 'Power loss',
    asks: 'What do spindle, vertical axis and rotary do when the power fails or the emergency stop is pressed?',
  },
];

/** To whoever sells the rotary. */
export const ROTARY_QUESTIONS: readonly QuoteQuestion[] = [
  {
    about: 'Axes of the rotary on the control',
    asks: 'Which motors, position feedback, brake signal and plugs does the rotary have, and on which machines and controls has it been run?',
  },
  {
    about: 'Plugs and hoses',
    asks: 'At which end of the rotary do plugs and hoses come out, how much room do they need there, and does that end clear the column or the door as the rotary is to be mounted?',
  },
  {
    about: 'Bolts and keys',
    asks: 'Where are keys and clamping slots in the mounting that is planned, and which bolts must stand on the table?',
  },
  {
    about: 'Brakes',
    asks: 'Does each brake hold when power or air fails, what torque does it hold then, and how is the tilting table kept from dropping?',
  },
  {
    about: 'Loading',
    asks: 'What may rest on the housing while parts are loaded over it, and how is the rotary lifted: points, slings, center of mass?',
  },
];
