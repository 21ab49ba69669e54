import type { Vocabulary } from '../vocabulary.ts';

export const german: Vocabulary = {
  language: 'de',
  letters: { king: 'K', queen: 'D', rook: 'T', bishop: 'L', knight: 'S', pawn: '' },
  pieces: {
    king: 'König(?:s|es|e|en)?',
    queen: 'Damen?',
    rook: 'Turm(?:s|es|e)?|Türmen?',
    bishop: 'Läufer[sn]?',
    knight: 'Springer[sn]?',
    pawn: 'Bauern?',
  },
  colors: { white: 'weiß(?:e[rnms]?)?', black: 'schwarz(?:e[rnms]?)?' },
  sides: { white: 'weiß', black: 'schwarz' },
  us: 'wir',
  numbers: [
    'ein(?:e[nrm]?)?',
    'zwei',
    'drei',
    'vier',
    'fünf',
    'sechs',
    'sieben',
    'acht',
    'neun',
    'zehn',
    'elf',
    'zwölf',
  ],
  parts: {
    and: 'und',
    or: 'oder',
    at: 'auf',
    // An accusative in front of "auf" may be the end of a move; see `placing`.
    the: 'der|die|das|dem|des|vom|beim|dieser|diese|sein|seine|seiner|seines|ihr|ihre|ihrer|ihres|unser|unsere|unserer|mein|meine',
    any: '<the>|den|im|diesen|seinen|ihren|unseren|unsern|meinen',
    adj: '(?:(?!(?:eine?[rnms]?|keine?[rnms]?)\\b)[a-zäöüß-]+(?:e|en|er|es|em) ){0,2}?',
    now: '(?:jetzt |nun |schon |bereits |noch |also |somit |damit |hier |immer noch |wieder )?',
    not: '(?<denied>noch nicht |nicht mehr |nicht |kein |keine )',
    pawn: '-Bauern?',
    line: '-Linie',
    way: '(?:(?<long>lang)|(?<short>kurz))',
  },
  unreal: [
    'von [a-h][1-8] aus|wenn|falls|sofern|ob|sobald|solange|nachdem|nach|bevor|ehe|bis|dann|danach|später|bald|demnächst|künftig|irgendwann|sonst|andernfalls',
    'kann|können|könne|würden?|fiele|käme|stünden?|ständen?|gäbe|ginge|nähme|bliebe|ließen?|hinge|verlöre|gewänne|zöge|schlüge|liefe|hielte|wäre[nt]?|hätten?|könnten?|sollten?|müssten?|dürften?|wird|werden|wirst|werdet',
    'möchten?|will|wollen|wünsch\\w*|hoff\\w*|träum\\w*|plan\\w*|Pläne?|Ideen?|beabsichtig\\w*|bereite[nt]?|versuch\\w*|droh\\w*|Drohung\\w*',
    'Tricks?|Motive?|Muster|Alternative|Verlust|Fehlen|Abwesenheit|(?:ab|ein)?getauscht|geopfert|aufgegeben|brauch(?:t|en) (?:Weiß|Schwarz|man|wir)|(?:Weiß|Schwarz|man|wir) brauch(?:t|en)',
    'in (?:der|den|diesen|dieser|einer|anderen|manchen|vielen|allen|solchen|ähnlichen) (?:[a-zäöüß]+ ){0,2}(?:Stellung|Stellungen|Strukturen|Systemen|Abspielen|Fällen)',
    'ohne|statt|anstatt|stattdessen|anstelle|nicht mehr|nahm(?:en)?|gab(?:en)?|ging(?:en)?|kam(?:en)?|blieb(?:en)?|schlug(?:en)?|zog(?:en)?|fiel(?:en)?|verlor(?:en)?|gewann(?:en)?|hielt(?:en)?|ließ|spielten?|tauschten?|opferten?|machten?|setzten?|stellten?|brachten?|war(?:en)?|hatten?|stand(?:en)?|wurden?|früher|zuvor|vorher|ehemals|einst|verloren|fehlt|fehlen|verschwunden',
    'angenommen|typisch\\w*|üblich\\w*|meist(?:ens)?|oft|manchmal|normalerweise|gewöhnlich|generell|allgemein',
    'vergleichen?|verglichen|Verteidigung|Gambit|Eröffnung\\w*|Variante\\w*|ähnlich\\w*|anders als|wie in|wie im|(?:Stellungen|Strukturen|Varianten), (?:wo|in denen)|erscheint|ideal\\w*|Aufstellung|Aufbau|Formation|vertauschten',
  ].join('|'),
  indefinite: '(?<!(?:hat|haben) )(?:eine?[nrms]?|jede[rnms]?)',
  placing:
    'stell(?:t|en|e)|setz(?:t|en)|bring(?:t|en)|zieh(?:t|en)|führ(?:t|en)|postier(?:t|en)|pflanz(?:t|en)|überführ(?:t|en)|verleg(?:t|en)|schick(?:t|en)|entwickel(?:t|n)|gehör(?:t|en)|[a-zäöü]*zustellen|[a-zäöü]*zubringen|zu bringen|zu stellen|landet|springt|springen|geht|gehen',
  presupposing:
    ' (?:wird|werden|kann|können|muss|müssen|darf) [^.,;:]{0,40}?(?:fallen|hängen|warten|ziehen|weichen|gehen|zurückkehren|springen|vorrücken|laufen|verschwinden|fehlen|geschlagen|angegriffen|vertrieben|getauscht|gefesselt|verloren)(?:[ ]werden)?(?![a-zäöü])',
  denial: 'nicht|kein(?:e[rnms]?)?|nie|niemals|weder|kaum',
  joint: 'und|aber|doch|denn|während',
  elsewhere:
    'in (?:der|einer|seiner|meiner|dieser|unserer) (?:[a-zäöüß]+ ){0,2}Partie|Partien|Wettkampf|Eröffnung\\w*|Verteidigung|Gambit|Variante\\w*|System|Kapitel\\w*|Theorie|gespielt|spielte|wenn|falls|später|angenommen|irgendwann',
  order: {
    nextChapter: '(?:nächste[nsm]?|folgende[nsm]?) Kapitels?',
    previousChapter: '(?:vorige[nsm]?|vorherige[nsm]?|vorangehende[nsm]?) Kapitels?|Kapitel davor',
    below: 'unten|weiter unten',
    above: 'oben|weiter oben',
    laterHere: 'später in (?:diesem|dem) (?:Kapitel|Kurs|Buch)',
    earlierHere: '(?:früher|weiter vorn) in (?:diesem|dem) (?:Kapitel|Kurs|Buch)',
  },
  phrases: {
    'piece-on-square': {
      key: /[a-h][1-8]/i,
      forms: [
        '<the> <adj>(?:<color> )?<adj><piece> auf <squares>',
        '<any> <adj>(?:<color> )?<adj><piece> <squares>',
        '<any> (?:<color> )?<square>-<piece>',
        '(?:ein|eine|<the>) <adj>(?:<color> )?<adj><piece> (?:steht|sitzt|bleibt|ist) <now>(?:gut |sicher |schlecht |stark )?auf <square>',
        '<side> hat <now>(?:einen|eine|den|die) <adj><piece> auf <square>',
      ],
    },
    castled: {
      key: /rochiert/i,
      forms: [
        '<side> (?:hat|haben) <now>(?:<way> )?rochiert',
        '(?<both>beide(?: Seiten| Spieler| Könige)?) haben <now>(?:<way> )?rochiert',
        '<side> (?:hat|haben) (?<denied>noch nicht|nicht) (?:<way> )?rochiert',
      ],
    },
    'to-move': {
      key: /am Zug|zieht/i,
      forms: [
        '^(?:jetzt |nun |hier )?(?:ist )?<side> (?:ist )?<now>am Zuge?',
        '^<side> zieht(?=\\s*[.:,;!?)]|\\s*$| und (?:gewinnt|setzt))',
      ],
    },
    check: {
      key: /schach/i,
      forms: [
        '^(?:Doppel|Abzugs)?schach(?=\\s*[.,!:;)]|\\s*$)',
        '<side> (?:steht|ist) <now>im Schach',
        '^(?:das|dies|es) ist <now>(?:ein )?(?:Doppel|Abzugs)?schach',
      ],
    },
    mate: {
      key: /matt/i,
      forms: [
        '^(?:Schach)?matt(?=\\s*[.,!:;)]|\\s*$)',
        '^(?:das|dies|es) ist <now>(?:schach)?matt(?! in)',
        '<side> ist <now>(?:schach)?matt(?:gesetzt)?',
      ],
    },
    'mate-by-move': {
      key: /matt/i,
      forms: [
        '<move> ist <now>(?:schach)?matt(?! in)',
        'ist <move> <now>(?:schach)?matt(?! in)',
        '<side> setzt <now>mit <move> matt',
      ],
    },
    'mate-in': {
      key: /matt/i,
      forms: [
        '<side> (?:am Zug )?setzt <now>in <number> (?:Zug|Zügen) matt',
        '<side> hat <now>(?:ein )?Matt in <number>',
        '^(?:ein )?Matt in <number>',
        '^(?:das|dies|es) ist <now>(?:ein )?Matt in <number>',
      ],
    },
    'pawns-up': {
      key: /(?:Bauern?|Figur|Qualität) (?:mehr|weniger)|Mehrbauer|Material ist/i,
      forms: [
        '<side> (?:hat|haben) <now><number> (?:gesunden? |ganzen? )?Bauern (?:(?<up>mehr)(?! (?:als|am|auf|im))|(?<down>weniger)(?! (?:als|am|auf|im)))',
        '<side> (?:hat|haben) <now><number> (?<up>Mehrbauern?)',
        '<side> (?:hat|haben) <now>(?:eine) (?<officer>Figur) (?:(?<up>mehr)(?! (?:als|am|auf|im))|(?<down>weniger)(?! (?:als|am|auf|im)))',
        '<side> (?:hat|haben) <now>(?:die|eine) (?<exchange>Qualität) (?:(?<up>mehr)(?! (?:als|am|auf|im))|(?<down>weniger)(?! (?:als|am|auf|im)))',
        '(?:das )?Material ist <now>(?<level>ausgeglichen|gleich)',
      ],
    },
    'pawn-won': {
      key: /gewonnen|verloren/i,
      forms: [
        '<side> (?:hat|haben) <now>(?:<number> Bauern|eine (?<officer>Figur)) <now>(?:gewonnen|(?<lost>verloren))',
      ],
    },
    isolated: {
      key: /isol/i,
      forms: [
        '<any> <adj>(?:<color> )?isolierte[nrms]? (?:<color> )?(?:Damen)?Bauern? (?:auf )?<square>',
        '<any> isolierte[nrms]? (?:<color> )?<file><pawn>',
        '<any> (?:<color> )?Isolani auf <square>',
        '<side> hat <now>einen (?:<color> )?(?:isolierten (?:Damen)?Bauern|Isolani) auf <square>',
        '(?:Bauer (?:auf )?)<square> ist <now>(?:<not>)?(?:ein )?(?:isoliert|Isolani)',
        '<any> (?:<color> )?<file><pawn> ist <now>(?:<not>)?isoliert',
      ],
    },
    passed: {
      key: /Frei/i,
      forms: [
        '<any> <adj>(?:<color> )?Freibauern? (?:auf )?<square>',
        '<any> <adj>(?:<color> )?<file>-Freibauern?',
        '<side> hat <now>einen <adj>(?:<color> )?Freibauern? auf <square>',
        '(?:Bauer (?:auf )?)<square> ist <now>(?:<not>)?(?:ein )?(?:gedeckter )?Freibauer',
        '<any> (?:<color> )?<file><pawn> ist <now>(?:<not>)?(?:ein )?(?:gedeckter )?Freibauer',
      ],
    },
    doubled: {
      key: /doppel|verdoppelt/i,
      forms: [
        '<any> <adj>(?:<color> )?(?:Doppel|Tripel)bauern? (?:auf|in) der <file><line>',
        '<any> (?:<color> )?<file>-Doppelbauern?',
        '<side> hat <now>(?:einen )?(?:<color> )?(?:Doppel|Tripel)bauern? (?:auf|in) der <file><line>',
        '<side> hat <now>(?:einen )?(?:<color> )?Doppelbauern? auf <squares>',
        '<any> (?:<color> )?Doppelbauern? auf <squares>',
      ],
    },
    open: {
      key: /\b[a-h]-Linie/i,
      forms: [
        '(?:die|der|den|einer|auf) (?<half>halb)?offene[nrm]? <file><line>',
        'die <file><line> ist <now>(?:<not>)?(?<half>halb)?offen(?! für)',
      ],
    },
    'only-legal': {
      key: /legal/i,
      forms: [
        '<side> hat <now>(?:nur einen|genau einen|einen einzigen|einen) legalen Zug',
        '<move> ist <now>der einzige legale Zug',
        '^der einzige legale Zug',
      ],
    },
    replies: {
      key: /ha(?:t|ben) [^.]{1,40}(?:Antworten|Erwiderungen|Züge)/i,
      forms: [
        '<side> hat <now><number> (?:(?<weighed>sinnvolle|gute|wichtige|ernsthafte|vernünftige) )?(?:Antworten|Erwiderungen)',
        '<side> hat <now><number> (?<weighed>sinnvolle|gute|wichtige|ernsthafte|vernünftige) Züge',
      ],
    },
    'bishop-pair': {
      key: /Läuferpaar|beiden Läufer/i,
      forms: [
        '<side> (?:hat|haben) <now>(?:das Läuferpaar|die beiden Läufer)(?= *[,.;:!)]|$| und )',
      ],
    },
    pinned: {
      key: /fessel/i,
      forms: [
        '<the> (?:<color> )?<piece> (?:auf )?<square> ist <now>(?:<not>)?gefesselt',
        '<any> gefesselte[nrms]? (?:<color> )?<piece> (?:auf )?<square>',
        'fesselt <any> <piece> (?:auf )?<square>',
      ],
    },
    attacks: {
      key: /(?:greift|attackiert) [a-h][1-8]/i,
      forms: [
        '<the> (?:<color> )?<piece> (?:greift <now><squares> an|attackiert <now><squares>)',
        '<side> (?:greift <now><squares> an|attackiert <now><squares>)',
      ],
    },
    'attacks-now': {
      key: /^\W*(?:greift|attackiert) [a-h][1-8]/i,
      forms: ['^(?:greift <squares> an|attackiert <squares>)'],
    },
    guards: {
      key: /(?:deckt|schützt|verteidigt) [a-h][1-8]/i,
      forms: [
        '^(?:deckt|schützt|verteidigt) <squares>',
        '<the> (?:<color> )?<piece> (?:deckt|schützt|verteidigt) <now><squares>',
      ],
    },
    'stands-better': {
      key: /besser|schlechter|auf (?:Gewinn|Verlust)/i,
      forms: [
        '<side> (?:steht|stehen) <now>(?:klar |deutlich |etwas |leicht |viel )?(?:(?:besser|auf Gewinn)|(?<down>schlechter|auf Verlust))(?= *[,.;:!)]|$| und )',
      ],
    },
  },
};
