import { mount } from "svelte";
import { Pool } from "../jobs/pool.ts";
import { webPoolSize, webThreads } from "../jobs/webThreads.ts";
import App from "./App.svelte";
import { Workbench } from "./state/workbench.svelte.ts";
import "./styles/tokens.css";
import "./styles/base.css";

const target = document.querySelector("#app");
if (!target) throw new Error("index.html has no element #app");
mount(App, { target, props: { bench: new Workbench(new Pool(webThreads, webPoolSize())) } });
