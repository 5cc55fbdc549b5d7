export { styledCharsFromTokens, styledCharsToString, tokenize } from '@alcalzone/ansi-tokenize';
