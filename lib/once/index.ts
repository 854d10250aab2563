export { oncePer, oncePerName, onFirstReading } from "./once";
export { workedOutOnReading } from "./worked-out-on-reading";
