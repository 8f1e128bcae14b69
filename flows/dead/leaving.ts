const CLOSE = 'Close up. Go back to the means.';
/** By which every make-dead can be left, before those of what its own cabinet holds. */
export const GATE_EXITS = [
  'proved',
  'fed',
  'before',
  'after',
  'line',
  'live',
  'lost-leg',
  'lines',
  'real',
  'no-source',
  'no-tool',
] as const;

/** What the ways out of these gates mean, in every cabinet. */
export const LEAVING = {
  fed: {
    forget: 'means',
    notice: 'Something still starts: another source feeds this unit. Find it before you go on.',
  },
  before: {
    forget: 'proving',
    notice:
      'The meter did not prove on the known source. Check leads, range and battery, then take the whole line again.',
  },
  after: {
    forget: 'proving',
    notice: 'The second proving failed, so the readings between it don’t count. Take the whole line again.',
  },
  line: { forget: 'proving', notice: 'The line is not complete. Take it again whole.' },
  live: { forget: 'means', notice: `This is live. ${CLOSE}` },
  'lost-leg': {
    forget: 'means',
    notice: `This is live with a lost leg: both legs show volts to ground. ${CLOSE} The lost leg is a finding.`,
  },
  lines: {
    forget: 'means',
    notice: 'A three-phase unit has three lines. Name them at the means, and read all six pairs.',
  },
  real: { forget: 'means', notice: `The volts hold under the tool, so a real source feeds them. ${CLOSE}` },
  'no-source': {
    forget: 'proving',
    notice:
      'Without a known source nothing is proved dead: an outlet, the line side of the locked means, or a proving unit from the truck. Take back the means to name another. Else type senior, or stop.',
  },
  'no-tool': {
    forget: 'proving',
    notice: 'Without the tool these volts are not explained. Fetch the resistor lead from the truck, or type senior.',
  },
} as const;
