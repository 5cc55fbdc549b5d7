import type { FeatureId } from '../../rules/features/ids.ts';

/** A feature as it is taught. No digits: numbers are worked out. */
export interface FeatureLesson {
  readonly plain: string;
  readonly mistake: string;
  readonly number: string;
  readonly limit: string;
  /** how the number and the line decide */
  readonly rule: 'required above' | 'required if any' | 'saves time' | 'worth having above';
  /** how much it is needed on the other side of the line */
  readonly otherwise: string;
}

const SAVED =
  'by what it saves: hours saved · shop rate · years ≥ price, it pays for itself, else it is worth having';
const SAVES =
  'Where no part requires it, minutes at each setup, times setups a year, times the rate of the shop and its years, are held against the price.';

/** Every feature as it is taught. A new id does not compile without. */
export const FEATURE_LESSONS: Readonly<Record<FeatureId, FeatureLesson>> = {
  axisDrives: {
    plain:
      'Each rotary axis takes a drive of the control. What is not fitted has to be ordered with the machine; later it is dear or not to be had.',
    mistake: 'To order the rotary first and ask about drives when it stands there.',
    number: 'rotary axes',
    limit: 'drives that are fitted',
    rule: 'required above',
    otherwise: 'not needed',
  },
  toolCenterPoint: {
    plain:
      'With it the control keeps the tip of the tool on its path while axes turn. Work in which all axes move at once needs it.',
    mistake: 'To order it for work whose axes stand braked while they cut.',
    number: 'hours a year in which all axes move in the cut',
    limit: 'none',
    rule: 'required if any',
    otherwise: 'not needed',
  },
  rotatingWorkOffset: {
    plain: `A part that is loaded by hand never sits exactly where the program has it. With this the control carries that difference along as the table turns. Parts off the axis require it. ${SAVES}`,
    mistake: 'To set every part to the hundredth instead, at every setup, for years.',
    number: 'greatest distance from the axis of a part that is loaded by hand',
    limit: 'none',
    rule: 'required if any',
    otherwise: SAVED,
  },
  tiltedWorkPlane: {
    plain:
      'With it a leaning face is programmed as if it lay flat. Together with a rotating work offset it lets parts sit where they come to sit.',
    mistake: 'To take it for simultaneous motion.',
    number: 'greatest distance from the axis of a part that is loaded by hand',
    limit: 'none',
    rule: 'required if any',
    otherwise: 'worth having, on one axis not needed',
  },
  spindleProbe: {
    plain: `A probe in the spindle finds where the axes of rotation lie, better than a hand with an indicator does. Where faces come out untrue without it, it is required. ${SAVES}`,
    mistake: 'To buy a better rotary for faces that a probe would make true.',
    number: 'error between faces with centers found by hand (setups a year, where no part requires it)',
    limit: 'error allowed (none, where no part requires it)',
    rule: 'required above',
    otherwise: SAVED,
  },
  toolSetter: {
    plain: `It measures tools on the machine. ${SAVES}`,
    mistake: 'To count the minutes at a tool and forget how many tools a setup takes.',
    number: 'setups a year',
    limit: 'tools that are measured anew at each setup',
    rule: 'saves time',
    otherwise: 'worth having, and where no time is saved not needed',
  },
  lookAhead: {
    plain:
      'Fine surfaces are many short moves. A control with look-ahead reads far enough to keep the feed and to brake in time.',
    mistake: 'To buy a faster machine for a path that the control cannot read.',
    number: 'blocks that the path asks for, each second or within its stopping distance',
    limit: 'blocks that the control works off as it comes',
    rule: 'required above',
    otherwise: 'not needed',
  },
  camPost: {
    plain:
      'A program for tilting axes is written by software, through a post-processor for this very machine, and proven in a simulation that knows its outlines. On a program alone nobody sees a collision coming.',
    mistake: 'To leave it out of the sum. Without it the first part waits, or the first crash pays for it.',
    number: 'greatest tilt of the work',
    limit: 'none',
    rule: 'required if any',
    otherwise: 'worth having',
  },
  longHolders: {
    plain:
      'Beside a wide faceplate or low on a side short tools do not reach. Longer holders do, and they cost stiffness.',
    mistake: 'To make every tool long. Only the few that need it should be.',
    number: 'length of the tool that is needed',
    limit: 'longest tool that there is',
    rule: 'required above',
    otherwise: 'not needed, or worth having where a longer tool that there is has to be used',
  },
  throughSpindleCoolant: {
    plain:
      'Deep holes pack with chips unless coolant comes through the tool. Tough materials want cooling at the very edge.',
    mistake: 'To look at the diameter. It is depth over diameter that decides.',
    number: 'depth of the deepest hole in its diameters',
    limit: 'depth from which on coolant should come through the spindle',
    rule: 'required above',
    otherwise: 'not needed, or worth having for titanium and nickel alloys',
  },
  chipConveying: {
    plain:
      'What is cut away has to leave the machine. Above a certain amount in an hour somebody shovels, or a conveyor does.',
    mistake: 'To guess from the size of the part. A small part out of a large blank makes more chips.',
    number: 'metal cut to chips in an hour',
    limit: 'amount from which on a conveyor is worth having',
    rule: 'worth having above',
    otherwise: 'not needed',
  },
  mistAndFire: {
    plain:
      'Fine chips of some metals burn, and oil mist does. Where such materials are cut, extraction and protection against fire are not a matter of comfort.',
    mistake:
      'To put out burning metal with water. Ask the fire department what belongs beside this machine before the first chip.',
    number: 'hours a year in which chips that burn are made',
    limit: 'none',
    rule: 'required if any',
    otherwise: 'not needed',
  },
};
