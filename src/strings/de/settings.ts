import type { settings as english } from '../en/settings.ts';

export const settings: typeof english = {
  title: 'Einstellungen',
  lead: 'Sie gelten in diesem Browser für alle Kurse an dieser Adresse.',
  close: 'Schließen',
  theme: { title: 'Hell oder dunkel', own: 'Wie das System', light: 'Hell', dark: 'Dunkel' },
  notation: {
    title: 'Züge',
    letters: 'Deutsche Buchstaben: {move}',
    english: 'Englische Buchstaben: {move}',
    figurines: 'Figuren: {move}',
  },
  size: { title: 'Bretter', small: 'Klein', own: 'Mittel', large: 'Groß' },
  motion: { title: 'Ein Zug auf dem Brett', own: 'Die Figur gleitet', off: 'Die Figur springt' },
  sound: { title: 'Ton bei jedem Zug', own: 'Aus', on: 'An' },
};
