import { fullDiskTrial } from "./full-disk-trial";
import { share } from "./places";

fullDiskTrial({ sqlite: share(40), postgres: share(12) });
