/** A line for a terminal. What it shows may come from a file that somebody else wrote. */

/** Without what would move the cursor, clear the screen or turn the text round. */
export const plain = (text: string): string =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what has to go
  text.replace(/[\u0000-\u001f\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069]/g, '\uFFFD');
