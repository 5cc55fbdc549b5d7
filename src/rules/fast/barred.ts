/** What is thrown where something is read that may not be; one object, since it is thrown often. */
const BARRED = Object.freeze({ barred: true });

/** Stands where a machine, a rotary or a part may not be read; what `known` says may be. */
export const barred = <Of extends object>(known: Partial<Of> = {}): Of =>
  new Proxy(known as Of, {
    get(target, key) {
      if (key in target) return Reflect.get(target, key);
      return refuse();
    },
  });

/** Where a single value may not be read. */
export function refuse(): never {
  throw BARRED;
}

/** What comes out if nothing that is barred is read for it; null: something is. Other errors go through. */
export function unlessBarred<Found>(make: () => Found): Found | null {
  try {
    return make();
  } catch (thrown) {
    if (thrown === BARRED) return null;
    throw thrown;
  }
}
