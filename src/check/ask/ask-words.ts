/**
 * The few sentences of a question that can be understood for sure, in English, German and Spanish. A letter is
 * whatever Unicode calls one: for `\b`, the end of `Weiß` is none.
 */

const white = 'White|Weiß|Weiss|blancas';
const black = 'Black|Schwarz|negras';

/** Group 1 is the side that is to move. */
export const sidesToMove: readonly RegExp[] = [
  `(?<!(?:with|for|allow|allows|let|lets|want|wants|force|forces|help|helps|expect|expects) )(White|Black)(?: is)? to (?:move|play|mate)`,
  `(?:it is|it['’]s) (White|Black)['’]s (?:move|turn)`,
  `(?:what|which move) (?:does|should|must) (White|Black) play(?! (?:against|on|to)(?!\\p{L}))`,
  `how (?:does|should|must|can) (White|Black) (?:continue|proceed|go on)`,
  `(?:what is|find|which is) (White|Black)['’]s (?:best|strongest|only|right|correct) (?:move|reply|answer|continuation)`,
  `(?:best|strongest|only|right|correct) (?:move|reply|continuation) for (White|Black)`,
  `(Weiß|Weiss|Schwarz)(?: ist)? am Zuge?`,
  `wie (?:setzt|spielt|macht) (Weiß|Weiss|Schwarz) (?:fort|weiter)`,
  `(?:beste|besten|stärkste|stärksten|einzige|einzigen|richtige|richtigen) (?:Zug|Antwort|Fortsetzung) (?:für|von) (Weiß|Weiss|Schwarz)`,
  `(Weiß|Weiss|Schwarz) zieht(?= und(?!\\p{L})| *[.!?:;,]| *$)`,
  `(?:was|welchen Zug) (?:spielt|zieht) (Weiß|Weiss|Schwarz)(?! (?:gegen|auf|um)(?!\\p{L}))`,
  `(?:juegan|mueven) (?:las )?(blancas|negras)`,
  `(blancas|negras) (?:juegan|mueven)(?= y(?!\\p{L})| *[.!?:;,]| *$)`,
  `cómo (?:siguen|continúan) (?:las )?(blancas|negras)`,
  `(?:mejor|única) (?:jugada|respuesta|continuación) (?:de|para) (?:las )?(blancas|negras)`,
  `turno de (?:las )?(blancas|negras)`,
].map(words);

/** What makes it doubtful whether a sentence speaks of this move of this position. */
export const doubtful = words(
  `if|unless|were|(?:it|White|Black) was|would|suppose|imagine|instead|after|before|when|once|had|` +
    `wenn|falls|wäre|würde|war|angenommen|nach|bevor|statt|` +
    `si|fuera|fuese|sería|era|suponga|supongamos|tras|después|antes|cuando`,
);

/** What makes it doubtful that a sentence asks for just this. */
export const notAsked = words(
  `not|never|no|without|avoid|avoids|prevent|prevents|stop|stops|defend|defends|parry|escape|escapes|against|` +
    `threat|threats|threaten|threatens|threatened|back|regain|regains|lose|loses|losing|wants?|wanted|try|tries|` +
    `tried|hopes?|could|might|may|why|but|or|` +
    `nicht|kein|keine|keinen|ohne|verhindert?|verhindern|vermeidet?|vermeiden|abwehren|pariert|parieren|gegen|` +
    `Drohung|droht|drohen|zurück|verliert|verlieren|will|möchte|könnte|warum|aber|oder|` +
    `sin|nunca|ni|evitar?|evitan|impedir|impide|impiden|defiende|defender|contra|amenaza|amenazan|amenazar|` +
    `recuperan?|recuperar|pierden?|quieren?|podrían?|por qué|pero|o`,
);

/** A question that may be answered with no. */
export const openQuestion =
  /^[\s¿¡"“„]*(?:does|do|can|could|is|are|may|will|should|kann|könnte|darf|ist|soll|hat|gewinnt|gibt|setzt|puede|pueden|hay|ganan?|dan|es)(?!\p{L}).*\?/isu;

const numbers: Readonly<Record<string, number>> = {
  ...{ one: 1, two: 2, three: 3, four: 4, five: 5 },
  ...{ einem: 1, zwei: 2, drei: 3, vier: 4, fünf: 5 },
  ...{ una: 1, uno: 1, un: 1, dos: 2, tres: 3, cuatro: 4, cinco: 5 },
};

export function readNumber(word: string): number | undefined {
  return /^\d+$/.test(word) ? Number(word) : numbers[word.toLowerCase()];
}

/** Group 1 is the number of moves. */
export const mateInMoves = words(
  `(?:mate|mates|Matt|mate) (?:in|en) (\\d+|one|two|three|four|five|einem|zwei|drei|vier|fünf|una|uno|un|dos|tres|cuatro|cinco)`,
);

/** Mate is asked for, in whatever number of moves. */
export const mateAsked: readonly RegExp[] = [
  `(?:give|find|deliver|force)(?: the| a)? (?:check)?mate`,
  `(?:White|Black) (?:to (?:move|play) and |to )?(?:check)?mates?`,
  `how does (?:White|Black) (?:check)?mate`,
  `(?:Weiß|Weiss|Schwarz) (?:zieht und )?setzt matt`,
  `setze? (?:Weiß|Weiss|Schwarz|den König) matt|finde das Matt`,
  `(?:blancas|negras) (?:juegan y )?dan (?:jaque )?mate|(?:juegan|mueven) (?:las )?(?:blancas|negras) y dan (?:jaque )?mate|da (?:jaque )?mate`,
].map(words);

export const checkAsked: readonly RegExp[] = [
  `give (?:a )?check`,
  `(?:gib|gebe|biete) Schach`,
  `da jaque(?! mate)`,
].map(words);

/** What is won, and the fewest pawns that it leaves its winner ahead by: a queen may cost a rook. */
export const winnings: readonly { readonly asked: RegExp; readonly pawns: number }[] = [
  ['a pawn|one pawn|the pawn', 'einen Bauern|den Bauern', 'un peón|el peón', 1],
  ['two pawns', 'zwei Bauern', 'dos peones', 2],
  ['the exchange', 'die Qualität', 'la calidad', 1],
  [
    'a piece|a minor piece|a knight|a bishop|the knight|the bishop',
    'eine Figur|eine Leichtfigur|einen Springer|einen Läufer|den Springer|den Läufer',
    'una pieza|un caballo|un alfil|el caballo|el alfil',
    2,
  ],
  ['a rook|the rook', 'einen Turm|den Turm', 'una torre|la torre', 3],
  ['the queen|a queen', 'die Dame|eine Dame', 'la dama|una dama', 2],
].map(([english, german, spanish, pawns]) => ({
  asked: words(
    `wins? (?:${english})|(?:gewinne?|gewinnt) (?:${german})|(?:${german}) (?:zu )?gewinn(?:t|en)|(?:gana|ganan|ganar) (?:${spanish})`,
  ),
  pawns: Number(pawns),
}));

export function sideOf(word: string): 'white' | 'black' | undefined {
  if (new RegExp(`^(?:${white})$`, 'iu').test(word)) return 'white';
  return new RegExp(`^(?:${black})$`, 'iu').test(word) ? 'black' : undefined;
}

/** Every name of a side. */
export const sideNames = new RegExp(`(?<!\\p{L})(${white}|${black})(?!\\p{L})`, 'giu');

/** Whole words, whatever their case. */
function words(pattern: string): RegExp {
  return new RegExp(`(?<!\\p{L})(?:${pattern})(?!\\p{L})`, 'iu');
}
