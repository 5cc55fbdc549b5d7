/** Words with a capital in front. Example: sentenceCase('table load') → 'Table load'. */
export const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
