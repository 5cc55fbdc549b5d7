/** A test to be written into the order. Names of standards are the only wording that may hold digits. */
export interface AcceptanceTest {
  readonly id: 'linear' | 'rotary' | 'axis' | 'together' | 'own-part';
  readonly standard: string | null;
  readonly about: string;
  readonly shows: string;
  readonly showsNot: string;
}

/** Scopes as the standards give them; the words are our own. */
export const ACCEPTANCE_TESTS: readonly AcceptanceTest[] = [
  {
    id: 'linear',
    standard: 'ISO 230-2',
    about: 'positioning of each linear axis',
    shows:
      'how near each straight axis comes to where it is sent, and how well it comes back there, one axis at a time',
    showsNot: 'how the axes move together, what a cut does to them, or what the part measures',
  },
  {
    id: 'rotary',
    standard: 'ISO 230-2',
    about: 'positioning of each rotary axis',
    shows:
      'how near the rotary comes to the angle that it is sent to, and how well it comes back there, one axis at a time',
    showsNot: 'where the axis lies, whether it wobbles, whether the brake holds, or what the part measures',
  },
  {
    id: 'axis',
    standard: 'ISO 230-7',
    about: 'axes of rotation: the rotary axes, and the spindle',
    shows: 'how far the axis moves off its line while it turns, and how it shifts with speed',
    showsNot: 'the angle that it stops at, and how it moves as it warms up; both are outside that standard',
  },
  {
    id: 'together',
    standard: 'ISO 10791-6',
    about: 'speeds, feeds and paths of several axes at once',
    shows:
      'whether speeds and feeds are what they are set to, and how well straight and rotary axes follow a path together',
    showsNot: 'the error of a part that was cut: such paths are run without cutting your material',
  },
  {
    id: 'own-part',
    standard: null,
    about: 'a part of your own, cut on it and measured',
    shows:
      'what all of it does together with your fixture, tools and program: none of the tests above states accuracy in your part',
    showsNot: 'which axis an error comes from; for that the tests above are there',
  },
];
