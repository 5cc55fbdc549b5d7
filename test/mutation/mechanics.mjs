import { settings } from './settings.mjs';

export default settings('mechanics', ['src/mechanics/**/*.ts']);
