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
      { press: 'G', does: 'show where things lay as the day began, or hide it' },
      { press: '+ and −', does: 'nearer, farther' },
      { press: '0', does: 'show the whole site' },
      { press: 'Escape', does: 'put a drag back without a trace' },
    ],
  },
  {
    where: 'Instruments, from the drawing',
    keys: [
      { press: 'D', does: 'draw hole' },
      { press: 'M', does: 'site mark' },
      { press: 'S', does: 'rod' },
      { press: 'A', does: 'reach: arcs of who gets where' },
      { press: 'L and E', does: 'measure a line, an area' },
      { press: 'I', does: 'pencil' },
      { press: 'C', does: 'clearance ring' },
      { press: 'W', does: 'waypoints of a walk' },
      { press: 'O and F', does: 'boundary, feature' },
      { press: 'N', does: 'snapping off or on; Alt, while it is held, snaps to nothing' },
    ],
  },
  {
    where: 'With an instrument in the hand',
    keys: [
      { press: 'arrow keys', does: 'bring a cross, then move it ten metres, with Shift one' },
      { press: 'Space', does: 'press at the cross' },
      { press: 'Enter', does: 'press at the cross and make it the last: the green of a hole, say' },
      {
        press: 'digits, = or (',
        does: 'type a length (380), all of it (=380), with a bearing (380 @ 045), or a place: (120.5, 40)',
      },
      { press: 'Backspace', does: 'one step back in what is drawn' },
      { press: 'Escape', does: 'put back what is half drawn; again, put the instrument away' },
      { press: 'double click, second button, or a long press', does: 'this point is the last' },
      { press: 'Space or the middle button while dragging', does: 'move the paper' },
    ],
  },
  {
    where: 'In the round',
    keys: [
      { press: '↑ ↓', does: 'go from hole to hole' },
      { press: '→ and ←', does: 'go to the walk from its green, and back to the hole' },
      { press: 'Shift + ↑ ↓, or Shift or Ctrl and a press', does: 'pick out several holes' },
      { press: 'Enter or Space', does: 'pick up what is picked out, then put it down' },
      { press: '↑ ↓ while it is held', does: 'move it, with what that does shown at once' },
      { press: 'Escape', does: 'leave it where it was' },
      { press: 'Delete', does: 'take the hole out to the spare tray' },
      { press: 'Alt while dragging', does: 'swap with the hole under the pointer' },
    ],
  },
] as const;
