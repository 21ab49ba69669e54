import type { Vocabulary } from '../vocabulary.ts';

export const spanish: Vocabulary = {
  language: 'es',
  letters: { king: 'R', queen: 'D', rook: 'T', bishop: 'A', knight: 'C', pawn: '' },
  pieces: {
    king: 'rey(?:es)?',
    queen: 'damas?',
    rook: 'torres?',
    bishop: 'alfil(?:es)?',
    knight: 'caballos?',
    pawn: 'pe(?:ón|on|ones)',
  },
  colors: { white: 'blanc[oa]s?', black: 'negr[oa]s?' },
  sides: { white: '(?:las |el )?blanc[oa]s?', black: '(?:las |el )?negr[oa]s?' },
  us: 'nosotros',
  numbers: [
    'una?|un solo|una sola',
    'dos',
    'tres',
    'cuatro',
    'cinco',
    'seis',
    'siete',
    'ocho',
    'nueve',
    'diez',
    'once',
    'doce',
  ],
  parts: {
    and: 'y',
    or: 'o|u',
    at: 'en|de',
    the: 'el|la|los|las|al|del|este|esta|estos|estas|su|sus|nuestro|nuestra|nuestros|nuestras|mi|mis',
    // Only words that are no verbs: "el caballo entra en e5" is a move.
    adj: '(?:(?:aislad[oa]s?|pasad[oa]s?|doblad[oa]s?|central(?:es)?|débil(?:es)?|fuertes?|activ[oa]s?|pasiv[oa]s?|bloquead[oa]s?|avanzad[oa]s?|extra|rey|dama|indefens[oa]s?|clavad[oa]s?) )?',
    now: '(?:ya |ahora |aún |todavía |así |también |por tanto |aquí )?',
    not: '(?<denied>no |ya no |todavía no |aún no )',
    way: '(?:en )?(?:(?<long>largo)|(?<short>corto))',
    has: 'tienen?|cuentan? con|disponen? de',
    is: 'está|están|queda|quedan|es|son',
  },
  unreal: [
    'desde [a-h][1-8]|si|(?<!no )pueden?|cuando|una vez|tras|después|antes|luego|pronto|más tarde|más adelante|algún día|entonces|hasta que|en cuanto|mientras|apenas',
    '\\p{L}+(?:ará|arán|erá|erán|irá|irán|dría|drían|aría|arían|ería|erían|iría|irían|drá|drán)',
    'quieren?|querer|desean?|esperan?|sueñan?|planean?|plan(?:es)?|ideas?|pretenden?|intentan?|preparan?|buscan?|amenaz\\p{L}*|piensan?',
    'trucos?|motivos?|alternativas?|pérdida|ausencia|cambiado|capturado|sacrificado|entregado|(?:se|las blancas|las negras) necesitan?',
    'en (?:la|el|esta|este|otras|otros|muchas|todas|tales|algunas) (?:\\p{L}+ ){0,2}(?:línea|líneas|posición|posiciones|estructuras?|sistemas?|casos?)',
    'sin|en vez|en lugar|ya no|era|eran|estaba|estaban|había|habían|fue|fueron|\\p{L}+(?:aron|ieron)|\\p{L}+ó|tenía|tenían|clavaba|\\p{L}+aba|\\p{L}+aban|perdid[oa]s?|falta|faltan|desaparecid[oa]s?',
    'supon\\p{L}*|suele|suelen|normalmente|a menudo|a veces|generalmente|en general|típic[oa]s?|habitual(?:es)?|usual(?:es)?',
    'compár\\p{L}*|compar\\p{L}*|defensa|gambito|apertura|variante|similar|a diferencia|como en|(?:posiciones|estructuras|líneas) (?:donde|en las que)|aparecen?|llegan?|ideal(?:es)?|disposición|esquema|despliegue|invertidos|deja|dejan',
  ].join('|'),
  indefinite: '(?<!(?:tiene|tienen) )(?:una?|cualquier|otr[oa])',
  placing:
    'coloc(?!ad)\\p{L}*|sitú\\p{L}*|situ(?!ad)\\p{L}*|pon(?:e|en|er|iendo)|instal(?!ad)\\p{L}*|plant\\p{L}*|llev\\p{L}*|ubic(?!ad)\\p{L}*|traslad\\p{L}*|desarroll\\p{L}*|recaptur\\p{L}*|maniobr\\p{L}*|entr(?:a|an|ar)|salt(?:a|an|ar)',
  presupposing:
    ' (?:caerá|caerán|(?:puede|pueden|debe|deben|va a|van a) (?:caer|esperar|moverse|retirarse|irse|volver|saltar|avanzar|desaparecer|elegir|ser (?:tomad|atacad|capturad|expulsad|cambiad|clavad)[oa]s?))(?!\\p{L})',
  denial: 'no|nunca|jamás|ningún|ninguna|ni|tampoco',
  joint: 'y|e|pero|mientras que',
  elsewhere:
    'en (?:la|una|su|esta|mi|nuestra) partida|partidas|apertura|defensa|gambito|variante|sistema|capítulos?|teoría|jugó|jugaron|si|más tarde|más adelante|supon\\p{L}*|algún día',
  order: {
    nextChapter: 'capítulo siguiente|(?:próximo|siguiente) capítulo',
    previousChapter: 'capítulo anterior|anterior capítulo',
    below: 'más abajo|abajo',
    above: 'más arriba|arriba',
    laterHere: 'más (?:tarde|adelante) en (?:este|el) (?:capítulo|curso|libro)',
    earlierHere: 'antes en (?:este|el) (?:capítulo|curso|libro)',
  },
  phrases: {
    'piece-on-square': {
      key: /[a-h][1-8]/i,
      forms: [
        '<the> <piece> <adj>(?:<color> )?<adj>(?:de|en) <squares>',
        '<the> <piece> <adj>(?:<color> )?<adj>que está en <square>',
        '(?:un|una|<the>) <piece> <adj>(?:<color> )?(?:está|sigue|se encuentra) <now>(?:bien |mal |segur[oa] |colocad[oa] |situad[oa] )?en <square>',
        '<side> <now>(?:<has>) <now>(?:una?|el|la|su) <piece> <adj>en <square>',
      ],
    },
    castled: {
      key: /enroca/i,
      forms: [
        '<side> <now>han? enrocado(?: <way>)?(?! artificialmente)',
        '(?<both>(?:los dos|ambos) (?:bandos|jugadores|reyes|lados)) <now>han enrocado(?: <way>)?',
        '<side> (?<denied>no|todavía no|aún no) han? enrocado(?: <way>)?',
      ],
    },
    'to-move': {
      key: /juega|toca |turno|mueve/i,
      forms: [
        '^(?:ahora )?(?:juegan?|mueven?) <side>(?=\\s*[.:,;!?)]|\\s*$| y (?:ganan?|dan?))',
        '^(?:ahora )?(?:les? )?toca (?:jugar |mover )?a <side>',
        '^(?:es el )?turno de <side>',
      ],
    },
    check: {
      key: /jaque/i,
      forms: [
        '^jaque(?: doble| a la descubierta)?(?=\\s*[.,!:;)]|\\s*$)',
        '<side> están? <now>en jaque',
        '^(?:esto )?es <now>jaque(?! mate)(?: doble)?',
      ],
    },
    mate: {
      key: /mate/i,
      forms: [
        '^(?:jaque )?mate(?=\\s*[.,!:;)]|\\s*$)',
        '^(?:esto )?es <now>(?:jaque )?mate(?! en)',
        '<side> han? recibido <now>(?:jaque )?mate',
      ],
    },
    'mate-by-move': {
      key: /mate/i,
      forms: [
        '<move> es <now>(?:jaque )?mate(?! en)',
        '<side> dan? <now>(?:jaque )?mate con <move>',
      ],
    },
    'mate-in': {
      key: /mate/i,
      forms: [
        '<side> (?:dan?|fuerzan?|tienen?) <now>(?:jaque )?mate en <number>',
        '^mate en <number>',
        '^(?:esto )?es <now>mate en <number>',
      ],
    },
    'pawns-up': {
      key: /(?:pe[oó]n|peones|pieza|calidad) (?:\p{L}+ )?(?:de |más|menos)|material está/iu,
      forms: [
        '<side> <now>(?:tienen?|cuentan? con|llevan?) <now><number> pe(?:ón|ones) (?:limpi[oa]s? |san[oa]s? )?(?:(?<up>de más|más|de ventaja)|(?<down>de menos|menos))(?! (?:que|en))',
        '<side> <now>(?:tienen?|cuentan? con|llevan?) <now>una (?<officer>pieza) (?:(?<up>de más|más)|(?<down>de menos|menos))(?! (?:que|en))',
        '<side> <now>(?:tienen?|cuentan? con|llevan?) <now>(?:la |una )?(?<exchange>calidad) (?:(?<up>de más|más)|(?<down>de menos|menos))(?! (?:que|en))',
        '(?:el )?material está <now>(?<level>igualado|equilibrado)',
      ],
    },
    'pawn-won': {
      key: /(?:ganado|perdido) /i,
      forms: [
        '<side> <now>han? (?:ganado|(?<lost>perdido)) (?:<number> pe(?:ón|ones)|una (?<officer>pieza))',
      ],
    },
    isolated: {
      key: /aislad/i,
      forms: [
        '<the> pe(?:ón|ones) (?:<color> )?(?:de dama )?aislados? (?:<color> )?(?:de|en) <square>',
        '<side> <now>(?:<has>) <now>un pe(?:ón) (?:de dama )?aislado en <square>',
        'peón (?:<color> )?(?:de |en )<square> (?:<not>)?(?:está|es|queda) <now>aislado',
        'peón (?:<color> )?<file> (?:está|es|queda) <now>aislado',
      ],
    },
    passed: {
      key: /pasad/i,
      forms: [
        '<the> peón (?:<color> )?pasado (?:<color> )?(?:de|en) <square>',
        '<side> <now>(?:<has>) <now>un peón pasado (?:<color> )?en <square>',
        'peón (?:<color> )?(?:de |en )<square> (?:es|está) <now>(?:un peón )?pasado',
        'peón (?:<color> )?<file> (?:es|está) <now>(?:un peón )?pasado',
      ],
    },
    doubled: {
      key: /doblad/i,
      forms: [
        '<the> peones (?:<color> )?doblados (?:<color> )?(?:de|en) la columna <file>',
        '<the> peones (?:<color> )?doblados (?:<color> )?(?:de|en) <squares>',
        '<side> <now>(?:<has>) <now>(?:los )?peones doblados en la columna <file>',
        '<side> <now>(?:<has>) <now>(?:los )?peones doblados en <squares>',
      ],
    },
    open: {
      key: /columna/i,
      forms: [
        'la columna <file> (?<half>semi)?abierta',
        'la columna (?<half>semi)?abierta <file>',
        'columna <file> (?:está|queda) <now>(?<half>semi)?abierta(?! para)',
      ],
    },
    'only-legal': {
      key: /legal/i,
      forms: [
        '<side> <now>(?:<has>) <now>(?:una sola|una única|solo una|sólo una) jugada legal',
        '<move> es <now>la única jugada legal',
        '^la única jugada legal',
      ],
    },
    replies: {
      key: /(?:tiene|cuenta|dispone)[^.]{1,40}(?:respuestas|jugadas)/i,
      forms: [
        '<side> <now>(?:<has>) <now><number> (?:(?<weighed>buenas|principales|importantes) )?respuestas',
        '<side> <now>(?:<has>) <now><number> respuestas (?<weighed>buenas|principales|importantes|razonables|sensatas)',
        '<side> <now>(?:<has>) <now><number> (?:(?<weighed>buenas|principales) jugadas|jugadas (?<weighed2>sensatas|razonables|buenas|principales))',
      ],
    },
    'bishop-pair': {
      key: /alfiles/i,
      forms: [
        '<side> <now>(?:<has>) <now>(?:la pareja de alfiles|los dos alfiles)(?= *[,.;:!)]|$| y )',
      ],
    },
    pinned: {
      key: /clava/i,
      forms: [
        '<the> <piece> (?:<color> )?(?:de|en) <square> (?:<not>)?(?:está|queda) <now>clavad[oa]',
        '<the> <piece> clavad[oa] (?:de|en) <square>',
        'clava (?:al|el|la|a la|a su) <piece> (?:de|en) <square>',
      ],
    },
    attacks: {
      key: /ataca [a-h][1-8]/i,
      forms: ['<the> <piece> (?:<color> )?<now>ataca <squares>', '<side> <now>atacan? <squares>'],
    },
    'attacks-now': {
      key: /^\W*ataca [a-h][1-8]/i,
      forms: ['^ataca <squares>'],
    },
    guards: {
      key: /(?:defiende|protege) [a-h][1-8]/i,
      forms: [
        '^(?:defiende|protege) <squares>',
        '<the> <piece> (?:<color> )?<now>(?:defiende|protege) <squares>',
      ],
    },
    'stands-better': {
      key: /mejor|peor|ganad|perdid/i,
      forms: [
        '<side> están? <now>(?:claramente |mucho |algo |un poco |ligeramente )?(?:(?:mejor|ganad[oa]s?)|(?<down>peor|perdid[oa]s?))(?= *[,.;:!)]|$| y )',
      ],
    },
  },
};
