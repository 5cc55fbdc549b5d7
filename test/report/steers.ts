/** Characters that move a cursor, color a terminal or turn writing around; line breaks do not. */
export const STEERS = /[^\P{Cc}\n]|[\p{Bidi_Control}\u2028\u2029]/u;
