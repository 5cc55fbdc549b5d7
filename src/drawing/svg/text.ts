import type { Element } from 'xast';
import { x } from 'xastscript';
import { length, TEXT_SIZE } from './paper.ts';

interface TextLook {
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly bold?: boolean;
  readonly size?: number;
  /** a white rim, to be read on hatching */
  readonly rim?: boolean;
  readonly upward?: boolean;
}

/** A line of text at its base line, mm on paper. */
export function textElement(text: string, atX: number, atY: number, look: TextLook = {}): Element {
  const { anchor = 'start', bold = false, size = TEXT_SIZE, rim = false, upward = false } = look;
  return x(
    'text',
    {
      x: length(atX),
      y: length(atY),
      'font-size': String(size),
      'text-anchor': anchor,
      'font-weight': bold ? 'bold' : undefined,
      transform: upward ? `rotate(-90 ${length(atX)} ${length(atY)})` : undefined,
      ...(rim
        ? { 'paint-order': 'stroke', stroke: '#fff', 'stroke-width': '1', 'stroke-linejoin': 'round' }
        : {}),
    },
    text,
  );
}
