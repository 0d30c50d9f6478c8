import type { Project } from "./project.ts";
import type { Corner } from "./zone.ts";

/** The project with its wedge in another corner, and known to be there. */
export function withWedgeIn(project: Project, corner: Corner): Project {
  return {
    ...project,
    zone: { ...project.zone, wedge: { ...project.zone.wedge, corner } },
    rules: { ...project.rules, wedgeCorners: [] },
  };
}
