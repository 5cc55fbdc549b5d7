/** How many parts an answers file may hold, and so an interview. */
export const MOST_PARTS = 200;
