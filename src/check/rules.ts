import type { CourseRule } from './course-rule.ts';
import { adviceConflict } from './rules/advice-conflict.ts';
import { allowUnused } from './rules/allow-unused.ts';
import { arrowFalse } from './rules/arrow-false.ts';
import { assessmentConflict } from './rules/assessment-conflict.ts';
import { assessmentMaterial } from './rules/assessment-material.ts';
import { chapterUnreadable } from './rules/chapter-unreadable.ts';
import { claimFalse } from './rules/claim-false.ts';
import { claimUnreadable } from './rules/claim-unreadable.ts';
import { makeCourseSetting } from './rules/course-setting.ts';
import { diagramAdvice } from './rules/diagram-advice.ts';
import { endGoesOn } from './rules/end-goes-on.ts';
import { engineAdvice } from './rules/engine-advice.ts';
import { engineExercise } from './rules/engine-exercise.ts';
import { engineReply } from './rules/engine-reply.ts';
import { engineSign } from './rules/engine-sign.ts';
import { engineVerdict } from './rules/engine-verdict.ts';
import { exerciseAsk } from './rules/exercise-ask.ts';
import { exerciseWrong } from './rules/exercise-wrong.ts';
import { factsUnreadable } from './rules/facts-unreadable.ts';
import { fenRights } from './rules/fen-rights.ts';
import { gameIllegal } from './rules/game-illegal.ts';
import { gameResult } from './rules/game-result.ts';
import { headingTaken } from './rules/heading-taken.ts';
import { idMissing } from './rules/id-missing.ts';
import { judgementDate } from './rules/judgement-date.ts';
import { labelDuplicate } from './rules/label-duplicate.ts';
import { labelNotLater } from './rules/label-not-later.ts';
import { labelUnknown } from './rules/label-unknown.ts';
import { lineRepeated } from './rules/line-repeated.ts';
import { linkMove } from './rules/link-move.ts';
import { linkUnknown } from './rules/link-unknown.ts';
import { materialEnPrise } from './rules/material-en-prise.ts';
import { mediaUnfit } from './rules/media-unfit.ts';
import { moveAmbiguous } from './rules/move-ambiguous.ts';
import { moveIllegal } from './rules/move-illegal.ts';
import { moveNumber } from './rules/move-number.ts';
import { moveOverwritten } from './rules/move-overwritten.ts';
import { moveSuffix } from './rules/move-suffix.ts';
import { moveUnreadable } from './rules/move-unreadable.ts';
import { newsLink } from './rules/news-link.ts';
import { ownRule } from './rules/own-rule.ts';
import { patternException } from './rules/pattern-exception.ts';
import { patternNotThere } from './rules/pattern-not-there.ts';
import { patternNowhere } from './rules/pattern-nowhere.ts';
import { patternUntrue } from './rules/pattern-untrue.ts';
import { pictureShape } from './rules/picture-shape.ts';
import { proseMoveSign } from './rules/prose-move-sign.ts';
import { proseMoveUnknown } from './rules/prose-move-unknown.ts';
import { replyUnanswered } from './rules/reply-unanswered.ts';
import { sameNotSame } from './rules/same-not-same.ts';
import { shelfAdviceConflict } from './rules/shelf-advice-conflict.ts';
import { shelfLink } from './rules/shelf-link.ts';
import { shelfSetting } from './rules/shelf-setting.ts';
import { tagInvalid } from './rules/tag-invalid.ts';
import { themeContrast } from './rules/theme-contrast.ts';
import { themeOneMode } from './rules/theme-one-mode.ts';
import { themeSigns } from './rules/theme-signs.ts';
import { themeUnreadable } from './rules/theme-unreadable.ts';
import { todoOpen } from './rules/todo-open.ts';
import { translationDiffers } from './rules/translation-differs.ts';
import { translationOpen } from './rules/translation-open.ts';
import { translationStale } from './rules/translation-stale.ts';
import { transpositionUntold } from './rules/transposition-untold.ts';
import { wordsFalse } from './rules/words-false.ts';

/** All rules, in the order of the handbook: a new rule is a file in `rules/` and a line here. */
export const rules: readonly CourseRule[] = [
  makeCourseSetting(() => rules),
  idMissing,
  chapterUnreadable,
  mediaUnfit,
  moveUnreadable,
  moveIllegal,
  moveAmbiguous,
  moveNumber,
  moveSuffix,
  moveOverwritten,
  labelDuplicate,
  labelUnknown,
  labelNotLater,
  linkUnknown,
  linkMove,
  headingTaken,
  proseMoveUnknown,
  proseMoveSign,
  claimUnreadable,
  claimFalse,
  arrowFalse,
  adviceConflict,
  materialEnPrise,
  replyUnanswered,
  endGoesOn,
  sameNotSame,
  transpositionUntold,
  lineRepeated,
  assessmentConflict,
  assessmentMaterial,
  exerciseWrong,
  exerciseAsk,
  diagramAdvice,
  fenRights,
  gameIllegal,
  gameResult,
  tagInvalid,
  patternNotThere,
  patternNowhere,
  patternUntrue,
  patternException,
  judgementDate,
  todoOpen,
  newsLink,
  ownRule,
  themeUnreadable,
  themeContrast,
  themeSigns,
  themeOneMode,
  pictureShape,
  engineAdvice,
  engineVerdict,
  engineSign,
  engineReply,
  engineExercise,
  factsUnreadable,
  shelfSetting,
  shelfLink,
  shelfAdviceConflict,
  wordsFalse,
  allowUnused,
  translationDiffers,
  translationOpen,
  translationStale,
];
