import type { embed as english } from '../en/embed.ts';

export const embed: typeof english = {
  embed: {
    open: 'Im Kurs öffnen',
    page: 'Bretter für andere Seiten',
    lead: 'Kopieren Sie den Text eines Kastens in den Quelltext Ihrer Seite.',
    choose: 'Wählen Sie das Kapitel, in dem die Stellung steht.',
    boards: { one: '{n} Brett', other: '{n} Bretter' },
    noSite:
      'Setzen Sie statt ADDRESS die Adresse des veröffentlichten Kurses ein, oder tragen Sie „site“ in course.yaml ein und erzeugen Sie die Seiten neu.',
    frame: 'Ein Rahmen mit einem Brett zum Durchspielen',
    element: 'Dasselbe als Teil der Seite, mit Skript und ohne Rahmen',
    picture: 'Ein Bild mit einem Verweis, ganz ohne Skript',
    script: 'Einmal je Seite, vor ihren Brettern:',
  },
};
