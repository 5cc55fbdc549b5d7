import type { Form, Panel, Point, Side } from '../../drawing/scene.ts';

const SIDE: Readonly<Record<Side, Side>> = { left: 'below', below: 'left', right: 'above', above: 'right' };

const turned = ([x, y]: Point): Point => [y, x];

const sideOf = (side: Side | 'on'): Side | 'on' => (side === 'on' ? side : SIDE[side]);

function turnedForm(form: Form): Form {
  if (form.kind === 'line' || form.kind === 'polygon') return { ...form, points: form.points.map(turned) };
  const center = turned(form.center);
  // what ran counterclockwise from the right runs clockwise from above, so its ends change places
  return form.kind === 'circle'
    ? { ...form, center }
    : { ...form, center, from: 90 - form.to, to: 90 - form.from };
}

/** A panel laid over so that what pointed up points to the right: a stack under a spindle that is level. */
export const onItsSide = (panel: Panel): Panel => ({
  ...panel,
  shapes: panel.shapes.map(({ thing, form }) => ({ thing, form: turnedForm(form) })),
  marks: panel.marks.map(({ at, name, stands }) => ({ at: turned(at), name, stands: sideOf(stands) })),
  dimensions: panel.dimensions.map((each) => ({
    ...each,
    from: turned(each.from),
    to: turned(each.to),
    side: SIDE[each.side],
  })),
  labels: panel.labels.map((label) => ({ ...label, at: turned(label.at), side: sideOf(label.side) })),
});
