/** The keys of the board, by where they work, for the sheet of keys. */
export const KEYS = [
  {
    where: 'Anywhere',
    keys: [
      { press: 'Ctrl or Cmd + Z', does: 'undo one’s own last step' },
      { press: 'Ctrl or Cmd + Y, or Shift + Ctrl or Cmd + Z', does: 'do it again' },
      { press: 'V', does: 'flip between the two routings shown last' },
      { press: 'T', does: 'open or close the drawer' },
      { press: '?', does: 'this sheet' },
    ],
  },
  {
    where: 'On the drawing',
    keys: [
      { press: '[ and ]', does: 'choose the hole before or after' },
      { press: 'P', does: 'choose the next part of the hole: tee, turn point, green, then all of it' },
      { press: 'arrow keys', does: 'move what is chosen a metre, with Shift ten; the paper when nothing is chosen' },
      { press: 'R', does: 'play the chosen hole the other way' },
      { press: 'hold B', does: 'see the plan as it was before the change' },
      { press: 'H', does: 'hide all findings, or show them' },
      { press: '+ and −', does: 'nearer, farther' },
      { press: '0', does: 'show the whole site' },
      { press: 'Escape', does: 'put a drag back without a trace' },
    ],
  },
  {
    where: 'In the round',
    keys: [
      { press: '↑ ↓', does: 'go from hole to hole' },
      { press: 'Enter or Space', does: 'pick a hole up, then put it down' },
      { press: '↑ ↓ while it is held', does: 'move it, with what that does shown at once' },
      { press: 'Escape', does: 'leave it where it was' },
      { press: 'Delete', does: 'take the hole out to the spare tray' },
      { press: 'Alt while dragging', does: 'swap with the hole under the pointer' },
    ],
  },
] as const;
