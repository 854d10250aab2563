export {
  explainProjectFile,
  type ProjectFileProblem,
  type ProjectTexts,
  projectFileJsonSchema,
  projectFileOf,
  type ReadProjectFile,
  readProjectFile,
} from "./project-file";
export type { Question } from "./questions";
export { letterText, type QuestionsLetter, questionsLetter } from "./questions-letter";
export { type DecidingFigure, type Recommendation, recommendation } from "./recommendation";
export type { Support } from "./support";
