export { asDone } from "../en/done.ts";
