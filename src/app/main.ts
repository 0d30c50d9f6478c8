import { mount } from "svelte";
import { Pool } from "../jobs/pool.ts";
import { webPoolSize, webThreads } from "../jobs/webThreads.ts";
import App from "./App.svelte";
import { keepForOffline } from "./offline/register.ts";
import { Shelf } from "./project/shelf.svelte.ts";
import { browserStore } from "./project/store.ts";
import { startLanguage } from "./state/language.ts";
import type { Opener } from "./state/ranking.svelte.ts";
import { Workbench } from "./state/workbench.svelte.ts";
import "./styles/tokens.css";
import "./styles/base.css";
import "./styles/contrast.css";
import "./styles/form.css";
import "./styles/print.css";

const target = document.querySelector("#app");
if (!target) throw new Error("index.html has no element #app");
await startLanguage();
const pool = new Pool(webThreads, webPoolSize());
// Fetched apart: the page is drawn while the patterns are still on their way.
const open: Opener = async (wish) => {
  const { openRace } = await import("./state/openRace.ts");
  return openRace(pool, wish);
};
mount(App, { target, props: { bench: new Workbench(pool, open, new Shelf(browserStore())) } });
keepForOffline();
