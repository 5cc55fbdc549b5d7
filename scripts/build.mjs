// Bundles the program: ESM with splitting, so that a command loads only what it needs; beside it the notices of
// the packages that are in it.
import { bundle } from './bundle.mjs';
import { writeThirdParty } from './third-party.mjs';

await writeThirdParty(await bundle('dist'), 'dist/THIRD-PARTY.txt');
