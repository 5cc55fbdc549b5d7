/** How each kind of thing is drawn. Kinds differ by line and hatching and never by color, so that they do in print too. */

export type Weight = 'thin' | 'plain' | 'heavy';
/** `ticked`: an outline with short strokes inward, for what only marks a limit; `faint`: from a point to its measure */
export type Stroke = 'solid' | 'dashed' | 'dotted' | 'chain' | 'ticked' | 'faint';
/** `blank`: hides what was drawn before, as hatching does; `none`: what was drawn before shows through */
export type Hatch = 'none' | 'blank' | 'rising' | 'falling' | 'crossed' | 'level' | 'upright' | 'dots';

export interface Look {
  readonly weight: Weight;
  readonly stroke: Stroke;
  readonly hatch: Hatch;
}

const look = (weight: Weight, stroke: Stroke, hatch: Hatch = 'none'): Look => ({ weight, stroke, hatch });

export const LOOKS = {
  table: look('heavy', 'solid'),
  /** what lies below a surface, without an end */
  ground: look('thin', 'dotted', 'falling'),
  slot: look('thin', 'solid'),
  plate: look('plain', 'solid', 'level'),
  base: look('heavy', 'solid'),
  housing: look('plain', 'solid', 'dots'),
  footprint: look('plain', 'solid', 'blank'),
  faceplate: look('heavy', 'solid'),
  fixture: look('plain', 'solid', 'falling'),
  part: look('heavy', 'solid', 'rising'),
  tool: look('plain', 'solid', 'blank'),
  nose: look('heavy', 'solid'),
  /** an end of a travel */
  limit: look('plain', 'dashed'),
  /** what a turning thing describes */
  sweep: look('thin', 'ticked'),
  axis: look('thin', 'chain'),
  vise: look('plain', 'solid', 'crossed'),
  free: look('thin', 'dashed'),
  bay: look('heavy', 'solid'),
  machine: look('plain', 'solid', 'falling'),
  service: look('thin', 'dashed', 'dots'),
  frame: look('thin', 'solid'),
  curve: look('heavy', 'solid'),
  guide: look('thin', 'dotted'),
  spot: look('plain', 'solid', 'crossed'),
  /** forms of bars */
  met: look('plain', 'solid', 'rising'),
  conditional: look('plain', 'dashed', 'level'),
  undecided: look('thin', 'dotted', 'dots'),
  missed: look('heavy', 'solid', 'crossed'),
} as const satisfies Readonly<Record<string, Look>>;

export type Thing = keyof typeof LOOKS;
