/** How a technician says that what runs looks and sounds right. */
export const NOTHING_ODD = {
  label: 'Nothing odd',
  words: [
    'fine',
    'ok',
    'good',
    'normal',
    'sounds good',
    'sounds fine',
    'sounds normal',
    'no noise',
    'quiet',
    'runs quiet',
    'clean',
  ],
};
