/** Tilts from 0° to 180° at which the height of a point (v, w) turns round: where v·cos θ = w·sin θ. */
export const heightTurns = (v: number, w: number): readonly number[] => halfTurns(Math.atan2(v, w));

/** Tilts from 0° to 180° at which its reach turns round: where −v·sin θ = w·cos θ. */
export const reachTurns = (v: number, w: number): readonly number[] => halfTurns(Math.atan2(-w, v));

const halfTurns = (radians: number): readonly number[] =>
  [-180, 0, 180].map((turn) => (radians * 180) / Math.PI + turn).filter((at) => at >= 0 && at <= 180);
