import { englishLetters } from '../../../chess/index.ts';
import type { Vocabulary } from '../vocabulary.ts';

export const english: Vocabulary = {
  language: 'en',
  letters: englishLetters,
  pieces: {
    king: 'kings?',
    queen: 'queens?',
    rook: 'rooks?',
    bishop: 'bishops?',
    knight: 'knights?',
    pawn: 'pawns?',
  },
  colors: { white: 'white', black: 'black' },
  sides: { white: 'white', black: 'black' },
  owners: { white: "white['’]s", black: "black['’]s" },
  us: 'we',
  numbers: [
    'an?|one',
    'two',
    'three',
    'four',
    'five',
    'six',
    'seven',
    'eight',
    'nine',
    'ten',
    'eleven',
    'twelve',
  ],
  parts: {
    and: 'and',
    or: 'or',
    at: 'on|at',
    the: 'the|this|that|his|her|its|their|our|my|your|<owner>',
    // Words between the article and the piece: no noun that takes an "of", no second article.
    adj: "(?:(?!(?:an?|the|this|that|his|her|its|their|our|my|your|of|for|to|no|any|if|or|and|with|from|by|like|as|is|has|where|than)\\b)[a-z][a-z’'-]*,? ){0,2}?",
    now: '(?:now |already |still |just |again |also |thus |therefore |clearly |simply |really )?',
    not: '(?<denied>not |no longer |not yet )',
    pawn: '[- ]pawn',
    line: '[- ]file',
    way: "(?:on the )?(?:(?<long>long|queenside|queen[’']s side)|(?<short>short|kingside|king[’']s side))",
  },
  unreal: [
    "if|unless|whether|can|would|could|should|might|may|will|won['’]t|shall|\\S+['’](?:ll|d)",
    'from [a-h][1-8]|as soon as|after|(?<!at )once|when|whenever|until|till|before|then|later|soon|next|eventually|some ?day|sooner|tomorrow',
    'dream(?:s|ed|ing)?|want(?:s|ed)?|wish(?:es)?|hop(?:e|es|ing)|plan(?:s|ned|ning)?|ideas?|aim(?:s|ing)? (?:to|for)|aiming|intend(?:s|ing)?',
    'prepar(?:e|es|ing)|try|tries|trying|going to|about to|in order to|likes?|prefers?|loves?',
    'tricks?|motifs?|themes?|patterns?|alternatives?|think(?:s|ing)? of|(?:we|you|he|white|black) needs?|loss|absence|lack|disappeared|vanished',
    'ha(?:s|ve) (?:exchanged|traded|swapped|given|lost|taken|captured|won|removed|sacrificed)',
    'in (?:the|this|that|a|other|some|most|many|all|such|similar) (?:[a-z]+ ){0,2}(?:lines?|positions?|structures?|systems?|cases?)',
    'instead|otherwise|without|no longer|any ?more|used to|was|were|had|been|did|gone|lost|missed|missing',
    'took|gave|went|came|stood|(?<!ha(?:s|ve) )left|kept|held|made|saw|fell|began|chose|drove|threw|(?:white|black|he|she|we|I|they) [a-z]+ed',
    'previously|formerly|earlier|imagine|suppos(?:e|ing)|assum(?:e|es|ing)|typical\\w*|usually|normally|often|sometimes|generally|in general',
    'elsewhere|compared?|opening|openings|defen[cs]e|gambit|variation|similar|unlike|as in|like in|threat\\w*|ideal|ideally|set-?ups?|formation|arrangement|scheme|reversed|has (?:moved|come|gone|travelled|walked)|(?:positions?|structures?|lines?) where',
    'appears?|arrives?|leads? to|turns? into|becomes?|rather than',
  ].join('|'),
  indefinite: '(?<!(?:has|have) )(?:an?|any|another|one)',
  placing:
    'puts?|putting|plac(?:e|es|ing)|plant(?:s|ing)?|post(?:s|ing)?|install(?:s|ing)?|station(?:s|ing)?|establish(?:es|ing)?|land(?:s|ing)?|bring(?:s|ing)?|brought|get(?:s|ting)?|set(?:s|ting)?|transfer(?:s|ring)?|relocat\\w*|manoeuv\\w*|maneuv\\w*|rerout\\w*|develop(?:s|ing)?|recaptur\\w* with|belongs? (?:on|at)',
  presupposing:
    ' (?:will|can|may|must|cannot|has to|have to) (?:soon |never |always |easily |still |also |now |just |only )?(?:fall|drop|hang|wait|move|retreat|leave|go|return|come|jump|advance|run|disappear|choose|escape|have|lose|be (?:taken|attacked|lost|won|chased|driven|traded|exchanged|captured|pinned|missed|defended|seen))(?![a-z])',
  denial: "not|no|n['’]t|neither|nor|never|hardly|no longer",
  joint: 'and|but|so|yet|while',
  elsewhere:
    'in (?:the|an?|this|that|one|his|her|my|our) (?:[a-z]+ ){0,2}(?:games?|match)|games? (?:against|between|of|from)|opening|openings|defen[cs]e|gambit|variation|system|chapters?|theory|played|if|unless|later|suppose|imagine|some ?day',
  order: {
    nextChapter: '(?:next|following) chapter',
    previousChapter: '(?:previous|preceding) chapter|chapter before(?: this(?: one)?)?',
    below: 'below|further down',
    above: 'above|further up',
    laterHere: '(?:later|further on) in (?:this|the) (?:chapter|course|book)',
    earlierHere: 'earlier in (?:this|the) (?:chapter|course|book)',
  },
  phrases: {
    'piece-on-square': {
      key: /\b(?:on|at) [a-h][1-8]|[a-h][1-8][- ][kqrbp]/i,
      forms: [
        '<the> <adj>(?:<color> )?<adj><piece> (?:here )?<at> <squares>',
        '<the> (?:<color> )?<square>[- ]<piece>',
        '(?:an?|<the>) <adj>(?:<color> )?<adj><piece> (?:stands?|sits?|lives?|is|are|stays?) <now>(?:well |badly |safe |safely |placed |posted |stuck )?<at> <squares>',
        '<side> <now>(?:has|have) <now>(?:an? |the |his |her |its |their |two |both )?<adj><piece> <at> <squares>',
      ],
    },
    castled: {
      key: /castled/i,
      forms: [
        '<side> (?:has|have) <now>castled(?: <way>)?(?! by hand)',
        '(?<both>both (?:sides|players|kings)) have <now>castled(?: <way>)?',
        "<side> (?:has|have)(?<denied> not yet| not|n['’]t(?: yet)?) castled(?: <way>)?",
      ],
    },
    'to-move': {
      key: /to move|to play|turn\b|['’]s move/i,
      forms: [
        "^(?:now )?(?:it(?:['’]s| is) )?(?:now )?<side> to (?:move|play)(?= and (?:win|mate|draw)|\\s*[.:,;!?)]|\\s*$)",
        "^(?:now )?it(?:['’]s| is) (?:now )?<owner> (?:turn|move)(?! that)",
      ],
    },
    check: {
      key: /check/i,
      forms: [
        '^(?:double |discovered )?check(?=\\s*[.,!:;)]|\\s*$)',
        '<side> (?:is|are) <now>in check',
        '<owner> king is <now>in check',
        '^(?:this|that|it) is <now>(?:a )?(?:double |discovered )?check(?!mate)',
      ],
    },
    mate: {
      key: /mate/i,
      forms: [
        '^(?:check)?mate(?=\\s*[.,!:;)]|\\s*$)',
        '^(?:this|that|it) is <now>(?:check)?mate(?! in)',
        '<side> (?:is|are) <now>(?:check)?mated',
      ],
    },
    'mate-by-move': {
      key: /mate/i,
      forms: ['<move>,? is <now>(?:check)?mate(?! in)', '<side> <now>(?:check)?mates with <move>'],
    },
    'mate-in': {
      key: /mate/i,
      forms: [
        '<side> <now>(?:(?:can |to (?:move|play) and )?(?:force )?(?:check)?mates?|forces (?:check)?mate|gives (?:check)?mate|has (?:a )?(?:forced )?mate) in <number>',
        '^(?:a )?(?:forced )?(?:check)?mate in <number>',
        "^(?:it is|it['’]s|this is|there is) <now>(?:a )?(?:forced )?mate in <number>",
      ],
    },
    'pawns-up': {
      key: /(?:pawns?|piece|exchange) (?:up|ahead|to|down|behind|more)|extra pawn|material is/i,
      forms: [
        '<side> (?:is|are) <now><number> (?:healthy |clear |clean |full |whole )?pawns? (?:(?<up>up|ahead|to the good)|(?<down>down|behind))(?! (?:on|in))',
        '<side> (?:has|have) <now><number> (?<up>extra) pawns?(?! (?:on|in|move))',
        '<side> (?:has|have) <now><number> pawns? (?<up>more)(?! (?:than|on|in))',
        '<side> (?:is|are) <now>a (?:clear |full |whole )?(?<officer>piece) (?:(?<up>up|ahead)|(?<down>down|behind))',
        '<side> (?:is|are) <now>(?:the|an) (?<exchange>exchange) (?:(?<up>up|ahead)|(?<down>down|behind))',
        '(?:the )?material is <now>(?<level>level|even|equal|balanced)',
      ],
    },
    'pawn-won': {
      key: /\b(?:won|lost) /i,
      forms: [
        '<side> (?:has|have) <now>(?:won|(?<lost>lost)) (?:<number> pawns?|a (?<officer>piece))',
      ],
    },
    isolated: {
      key: /isolated/i,
      forms: [
        "<the> (?:<color> )?<adj>isolated (?:<color> )?(?:queen['’]s |[a-h]-)?pawn <at> <square>",
        '<the> isolated <square><pawn>',
        '<the> isolated (?:<color> )?<file><pawn>',
        '(?:<side> has <now>an|there is an) (?:<color> )?isolated (?:<color> )?pawn <at> <square>',
        '<side> has <now>an isolated <file><pawn>',
        '(?:pawn <at> )?<square>(?:<pawn>)? is <now>(?:<not>)?(?:an )?isolated',
        '<the> (?:<color> )?<file><pawn> is <now>(?:<not>)?(?:an )?isolated',
      ],
    },
    passed: {
      key: /passed|passer/i,
      forms: [
        '<the> (?:<color> )?<adj>pass(?:ed pawn|er) <at> <square>',
        '<the> (?:[a-z]+ )?passed <square><pawn>',
        '<the> (?:[a-z]+ )?passed (?:<color> )?<file><pawn>',
        '(?:<side> has <now>a|there is a) <adj>pass(?:ed (?:<color> )?pawn|er) <at> <square>',
        '<side> has <now>a passed <file><pawn>',
        '(?:pawn <at> )?<square>(?:<pawn>)? is <now>(?:<not>)?(?:a )?(?:protected )?pass(?:ed|er)',
        '<the> (?:<color> )?<file><pawn> is <now>(?:<not>)?(?:a )?(?:protected )?pass(?:ed|er)',
      ],
    },
    doubled: {
      key: /doubled|tripled/i,
      forms: [
        '<the> (?:<color> )?(?:doubled|tripled) (?:<color> )?pawns on the <file><line>',
        '<the> (?:doubled|tripled) (?:<color> )?<file>-pawns',
        '<the> (?:<color> )?(?:doubled|tripled) (?:<color> )?pawns <at> <squares>',
        '<side> (?:has|have) <now>(?:doubled|tripled) pawns on the <file><line>',
        '<side> (?:has|have) <now>(?:doubled|tripled) <file>-pawns',
        '<side> (?:has|have) <now>(?:doubled|tripled) pawns <at> <squares>',
        '<the> (?:<color> )?<file>-pawns are <now>(?:<not>)?doubled',
      ],
    },
    open: {
      key: /\b[a-h][- ]file/i,
      forms: [
        'the <now>(?<half>half-|half |semi-)?open <file><line>',
        'the <file><line> is <now>(?:<not>)?(?<half>half-|half |semi-)?open(?! (?:to|for))',
      ],
    },
    'only-legal': {
      key: /legal/i,
      forms: [
        '<side> has <now>(?:only one|just one|one|a single|exactly one) legal (?:move|reply|answer)',
        '<move>,? is <now>(?:<owner> |the )?only legal (?:move|reply|answer)',
        '^(?:it is )?the only legal (?:move|reply|answer)',
      ],
    },
    replies: {
      key: /ha(?:s|ve) [^.]{1,40}(?:replies|answers|tries|moves|continuations)/i,
      forms: [
        '<side> has <now><number> (?:(?<weighed>sensible|good|main|serious|reasonable|important|decent) )?(?:replies|answers)',
        '<side> has <now><number> (?<weighed>sensible|good|main|serious|reasonable|important|decent) (?:moves|tries|continuations)',
      ],
    },
    'bishop-pair': {
      key: /bishop/i,
      forms: [
        '<side> (?:has|have) <now>(?:the (?:two bishops|pair of bishops|bishop pair|bishops)|a bishop pair)(?= *[,.;:!)]| against|$| and )',
      ],
    },
    pinned: {
      key: /\bpin(?:s|ned)\b/i,
      forms: [
        '<the> (?:<color> )?<piece> <at> <square> is <now>(?:<not>)?pinned(?! down)',
        '<the> <square>[- ]<piece> is <now>(?:<not>)?pinned(?! down)',
        '<the> pinned (?:<color> )?<piece> <at> <square>',
        'pins <the> <piece> <at> <square>',
        'pins <the> <square>[- ]<piece>',
      ],
    },
    attacks: {
      key: /\b(?:attacks|hits) [a-h][1-8]/i,
      forms: [
        '<the> (?:<color> )?<piece> <now>(?:attacks|hits) <squares>',
        '<side> <now>(?:attacks|hits) <squares>',
      ],
    },
    'attacks-now': {
      key: /^\W*(?:attacks|hits) [a-h][1-8]/i,
      forms: ['^(?:attacks|hits) <squares>'],
    },
    guards: {
      key: /\b(?:guards|defends|protects) [a-h][1-8]/i,
      forms: [
        '^(?:(?:attacks|hits) (?:[a-h][1-8]|the [a-z]+) and )?(?:guards|defends|protects) <squares>',
        '<the> (?:<color> )?<piece> <now>(?:guards|defends|protects) <squares>',
      ],
    },
    'stands-better': {
      key: /better|worse|winning|lost|losing/i,
      forms: [
        '<side> (?:is|are|stands?) <now>(?:clearly |much |slightly |a little |a bit |even |completely )?(?:(?:better|winning)|(?<down>worse|lost|losing))(?= *[,.;:!)]|$| and | here)',
      ],
    },
  },
};
