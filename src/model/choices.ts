import type { BallKind } from "./ball.ts";
import type { GroundOutline, RobotShape } from "./robot.ts";
import type { ArmsEnd, Move } from "./routine.ts";
import type { DeliveredRule, Layout } from "./rules.ts";
import type { Corner, Wall, WedgeProfile } from "./zone.ts";

/** The words a file may hold where there is a choice, in the order in which they are shown. */
export const WALLS: readonly Wall[] = ["left", "right", "bottom", "top"];
export const CORNERS: readonly Corner[] = ["lower-left", "lower-right", "upper-left", "upper-right"];
export const WEDGE_PROFILES: readonly WedgeProfile[] = ["flat", "ramp", "shelf", "tray"];
export const BALL_BUILDS: readonly BallKind["build"][] = ["solid", "hollow"];
export const DELIVERED_RULES: readonly DeliveredRule[] = ["centre", "wholly"];
export const LAYOUT_KINDS: readonly Layout["kind"][] = ["random", "fixed"];
export const SHAPE_KINDS: readonly RobotShape["kind"][] = ["plate", "arms", "scoop", "hinged", "polygon"];
export const GROUND_KINDS: readonly GroundOutline["kind"][] = ["body", "polygon"];
export const MOVE_KINDS: readonly Move["kind"][] = ["drive", "turn", "arc", "toWall", "wait", "arms"];
export const ARMS_ENDS: readonly ArmsEnd[] = ["open", "closed"];
