import { describe, expect, it } from "vitest";
import { robotFacts } from "../../../src/app/words/robotFacts.ts";
import { changedText, shippedProject, soundProject } from "../../support/projectFiles.ts";

const answers = (project: ReturnType<typeof shippedProject>) =>
  Object.fromEntries(robotFacts(project).map(({ question, answer }) => [question, answer]));

describe("what follows from a robot's measures", () => {
  it("says whether it fits, turns, carries, brakes and squares up", () => {
    const said = answers(shippedProject());
    expect(Object.keys(said)).toHaveLength(5);
    expect(said["Does it fit through the doorway?"]).toContain("181 mm wide, the doorway 250 mm: 34 mm");
    expect(said["Does it keep a ball when it brakes?"]).toMatch(/^Up to about \d+ mm\/s/);
    // Two tracks of 90 mm need 0.6 · 90 / (4 · 0.7) = 19.3 mm.
    expect(said["Can it square up against a wall?"]).toMatch(/^Yes, with its front and with its back.*19 mm/);
  });

  it("says up to which speed a plate keeps nothing, and closed arms everything", () => {
    const plate = answers(shippedProject("plate-robot.json"));
    expect(plate["Does it hold a ball in a turn?"]).toMatch(/^No: its pusher is less deep/);
    expect(plate["Does it keep a ball when it brakes?"]).toBeUndefined();
    const hinged = answers(shippedProject("swinging-arms.json"));
    expect(hinged["Does it fit through the doorway?"]).toMatch(/With closed arms it is \d+ mm wide\.$/);
    expect(hinged["Does it hold a ball in a turn?"]).toMatch(/^With closed arms at any speed/);
  });

  it("says how far closed arms stay apart when they let a ball out", () => {
    const open = (closedAngleDeg: number) =>
      answers(
        soundProject(
          changedText((file) => {
            file.robot.shape.closedAngleDeg = closedAngleDeg;
          }, "swinging-arms.json"),
        ),
      )["Does it hold a ball in a turn?"];
    // Straight ahead, tips 2 · (70 − 8) = 124 mm apart.
    expect(open(0)).toContain("leave 124 mm between their tips: a ball of 40 mm gets out");
    expect(open(-37)).not.toContain("gets out");
  });

  it("says that low parts ahead of the pusher stop it before the ball is on the wedge", () => {
    const low = (frontMm: number, climbs = false) =>
      answers(
        soundProject(
          changedText((file) => {
            file.robot.climbsWedge = climbs;
            file.robot.ground = {
              kind: "polygon",
              outlineMm: [
                [-75, -60],
                [frontMm, -60],
                [frontMm, 60],
                [-75, 60],
              ],
            };
          }),
        ),
      )["Can it push a ball onto the wedge?"];
    // The plate is 95 mm before the axle, a ball's middle another 20 mm.
    expect(low(110)).toBeUndefined();
    expect(low(125)).toMatch(/^No: .*a ball of 40 mm still lacks 10 mm/);
    expect(low(125, true)).toBeUndefined();
  });

  it("tells front and back apart where only one can straighten the robot", () => {
    const project = soundProject(
      changedText((file) => {
        file.robot.shape = {
          kind: "polygon",
          outlineMm: [
            [-80, -70],
            [20, -70],
            [100, 0],
            [20, 70],
            [-80, 70],
          ],
          pusherEdges: [1, 2],
        };
      }),
    );
    expect(answers(project)["Can it square up against a wall?"]).toMatch(/^Only with its back: .* 70 mm off/);
  });
});
