import { glMatrix, mat4, vec3 } from 'gl-matrix';

glMatrix.setMatrixArrayType(Array);

/** A point in the frame of the rotary: u along the tilt axis, v level, w up along the tool. */
export type Place = readonly [u: number, v: number, w: number];

/** A point of the part's surface before it is turned, with its outward normal. */
export interface SurfacePoint {
  readonly at: Place;
  readonly normal: Place;
}

/** A cylinder that stands with its axis beside the rotary axis. */
export interface StandingCylinder {
  readonly planRadius: number;
  readonly eccentricity: number;
  readonly bottom: number;
  readonly top: number;
}

const around = (steps: number): number[] =>
  Array.from({ length: steps }, (_, index) => (index * 2 * Math.PI) / steps);

/** Points all over the top disc (rim and middle included) and all over the wall. */
export function cylinderSurface(cylinder: StandingCylinder, steps: number): readonly SurfacePoint[] {
  const { planRadius, eccentricity, bottom, top } = cylinder;
  const points: SurfacePoint[] = [];
  for (const angle of around(steps)) {
    const [u, v] = [Math.cos(angle), Math.sin(angle)];
    for (const share of [0, 0.4, 0.8, 1]) {
      const radius = share * planRadius;
      points.push({
        at: [radius * u, eccentricity + radius * v, top],
        normal: [0, 0, 1],
      });
    }
    for (const share of [0, 0.3, 0.7, 1]) {
      const w = share === 1 ? top : bottom + share * (top - bottom);
      points.push({
        at: [planRadius * u, eccentricity + planRadius * v, w],
        normal: [u, v, 0],
      });
    }
  }
  return points;
}

/** Points all over one upright face of a block: `offset` from the part's axis, `width` wide, normal along v. */
export function faceSurface(
  face: {
    readonly offset: number;
    readonly width: number;
    readonly bottom: number;
    readonly top: number;
  },
  axis: readonly [u: number, v: number],
): readonly SurfacePoint[] {
  const points: SurfacePoint[] = [];
  for (const across of [-0.5, -0.2, 0, 0.3, 0.5]) {
    for (const up of [0, 0.4, 1]) {
      const w = up === 1 ? face.top : face.bottom + up * (face.top - face.bottom);
      points.push({
        at: [axis[0] + across * face.width, axis[1] + face.offset, w],
        normal: [0, 1, 0],
      });
    }
  }
  return points;
}

/** What the tool sees of the surface once the rotary has turned and the table has tilted. Angles in degrees. */
export function seen(surface: readonly SurfacePoint[], turn: number, tilt: number): readonly Place[] {
  const turned = mat4.create();
  mat4.rotateX(turned, turned, glMatrix.toRadian(tilt));
  mat4.rotateZ(turned, turned, glMatrix.toRadian(turn));
  const places: Place[] = [];
  for (const { at, normal } of surface) {
    const facing = vec3.transformMat4([0, 0, 0], [...normal], turned)[2] ?? Number.NaN;
    // a surface that is seen exactly edge on counts; a cosine of 90° in radians is 6e-17
    if (facing < -1e-12) continue;
    const [u = Number.NaN, v = Number.NaN, w = Number.NaN] = vec3.transformMat4([0, 0, 0], [...at], turned);
    places.push([u, v, w]);
  }
  return places;
}
