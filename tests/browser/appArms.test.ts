import { expect, it } from "vitest";
import { linkHash } from "../../src/app/project/link.ts";
import { SEED } from "../../src/app/state/seed.ts";
import { openStep } from "../support/appPage.ts";
import { openPage } from "../support/page.ts";
import { shippedText } from "../support/projectFiles.ts";

it("offers arms that swing, with measures that fit the body and the balls", async () => {
  const page = await openStep("Robot");
  await page.getByLabel("What pushes the balls").selectOption({ label: "Two arms that swing" });
  for (const name of [
    "Hinges, from the middle",
    "Open arms, turned outward",
    "Closed arms, turned outward",
  ]) {
    await page.getByLabel(name).waitFor();
  }
  expect(await page.locator("[aria-invalid=true]").count()).toBe(0);
  if (process.env.SHOTS) await page.screenshot({ path: `${process.env.SHOTS}/robot.png`, fullPage: true });
  await page.context().close();
});

it("says in a run's steps when the arms open and close", async () => {
  const link = { routine: "cage-hooks-all-c0-v60", seed: SEED, run: 0, timeS: 25.2 };
  const page = await openPage(await linkHash(shippedText("swinging-arms.json"), link));
  await page.locator("button[aria-current=true]").waitFor();
  await page
    .getByText(/close the arms/)
    .first()
    .waitFor({ state: "attached" });
  if (process.env.SHOTS) await page.screenshot({ path: `${process.env.SHOTS}/run.png`, fullPage: true });
  await page.context().close();
});
