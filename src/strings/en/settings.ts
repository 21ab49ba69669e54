/** The reader's own settings: a form over every page. */
export const settings = {
  title: 'Settings',
  lead: 'They hold for every course at this address, in this browser.',
  close: 'Close',
  theme: { title: 'Light and dark', own: 'As the system', light: 'Light', dark: 'Dark' },
  notation: {
    title: 'Moves',
    letters: 'Letters of the language: {move}',
    english: 'English letters: {move}',
    figurines: 'Figurines: {move}',
  },
  size: { title: 'Boards', small: 'Small', own: 'Medium', large: 'Large' },
  motion: { title: 'A move on the board', own: 'The piece glides', off: 'The piece jumps' },
  sound: { title: 'Sound of a move', own: 'Off', on: 'On' },
};
