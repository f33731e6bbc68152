import type { BoxPage, ScriptController } from '../binder/pages.ts'
import { EN_US } from '../words/words.ts'
import type { Words } from '../words/words.ts'
import { STATE_PATHS } from './state-shape.ts'

/**
 * What the script of a box page reads. Fields are picked one by one: a place in a file or a private value that came along with an object
 * never reaches a public page.
 */
export function boxScriptData(page: BoxPage, words: Words = EN_US): string {
  return jsonForScript({
    units: page.script.units,
    ...(page.offline ? { offline: { version: page.offline.version, tags: page.offline.tags } } : {}),
    tag: page.tag,
    box: page.box,
    site: page.site.title,
    batteries: page.script.batteries.map(({ controller, due }) => ({ controller, due })),
    controllers: page.script.controllers.map(pickController),
    words: { ...words.pages.script, ...page.script.words },
    shapes: STATE_PATHS
  })
}

function pickController(controller: ScriptController): ScriptController {
  const { season, outOfService } = controller
  return {
    controller: controller.controller,
    units: controller.units,
    delayBetweenStationsS: controller.delayBetweenStationsS,
    stepS: controller.stepS,
    ...(season ? { season: { from: season.from, to: season.to } } : {}),
    ...(outOfService ? { outOfService } : {}),
    programs: controller.programs.map(({ id, days, starts, stations, monthlyPercent, from, to, suspensions }) => ({
      id,
      days,
      starts,
      stations: stations.map(({ number, waters, runTime }) => ({ number, waters, runTime })),
      ...(monthlyPercent ? { monthlyPercent } : {}),
      ...(from ? { from } : {}),
      ...(to ? { to } : {}),
      ...(suspensions ? { suspensions: suspensions.map(one => ({ from: one.from, to: one.to })) } : {})
    }))
  }
}

/** JSON that cannot end the element it stands in, nor be read as a comment. */
export function jsonForScript(value: unknown): string {
  return JSON.stringify(value).replace(/[<>&\u2028\u2029]/gu, character => {
    return `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`
  })
}
