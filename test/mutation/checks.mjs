import { settings } from './settings.mjs';

export default {
  ...settings('checks', ['src/rules/checks/**/*.ts', '!src/rules/checks/example*.ts']),
  // no stage, room, measure or kind may be another word, and nothing may be read of what may be null: neither compiles
  mutator: { excludedMutations: ['StringLiteral', 'OptionalChaining'] },
};
