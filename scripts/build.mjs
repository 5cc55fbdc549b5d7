// Bundles the program: ESM with splitting, so that a command loads only what it needs.
import { bundle } from './bundle.mjs';

await bundle('dist');
