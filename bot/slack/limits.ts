/**
 * What the platform takes at most, in characters where nothing else is said. From the comments beside each block in
 * @slack/types 3.2 and docs.slack.dev/reference/block-kit; two are kept smaller than printed, for the reason beside them.
 */
export const LIMITS = {
  /** Printed: 40,000, cut off without a word; notifications show the beginning alone. */
  text: 3_500,
  /** Of all blocks together; undocumented, an issue thread (bolt-js 2509) has it at about 13,200. */
  allBlocks: 12_000,
  blocks: 50,
  viewBlocks: 100,
  header: 150,
  section: 2_900,
  button: 75,
  /** Of a menu, a radio button, a check box. */
  option: 75,
  /** Buttons in a row before a menu is easier to use with gloves on. */
  buttons: 5,
  menu: 100,
  radios: 10,
  confirmTitle: 100,
  confirmText: 300,
  confirmButton: 30,
  modalTitle: 24,
  label: 2_000,
  input: 3_000,
} as const;
