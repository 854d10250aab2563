export type { Installation, SettingProblem } from "./model";
export { installationFrom } from "./schema";
