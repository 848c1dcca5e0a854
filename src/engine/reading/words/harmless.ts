/**
 * Words of a yard that say nothing against gear. A remark passes only where every word of it stands here, is a name, a number,
 * a date or a code, or is damage that the remark itself denies or says was put right. So nothing may stand here that could
 * tell of damage together with other words of this list. Common practice, no source.
 */
import { type Group, list } from "./group";

export const HARMLESS: readonly Group[] = [
  {
    why: "small words that join the others",
    words: list(`
      a, about the same, again, ago, all, along, also, always, among, an, any, are, as, at, both, by, e.g, each, eg, else, etc, every
      for, from, had, has, have, he, her, here, him, his, i, i.e, ie, in, including, inside, into, is, it, its, my, of, on, once, onto
      or, our, outside, per, plus, same, she, since, so, the, their, them, then, there, they, this, those, through, to, together, was
      we, were, where, which, who, with, within
    `),
  },
  {
    why: "where something is beside something else",
    words: list(`
      above, across, against the wall, all round, all sides, around, back rack, behind, below, beneath, beside, between, both ends
      both legs, both sides, bottom, centre, close to, down below, downstairs, each side, east, end of, far end, far side, front
      ground floor, ground level, inner, left hand, left leg, left side, lh, low level, lower, middle, near, near side, next to, north
      off the floor, off the ground, on the left, opposite, outer, over, port, rear, rh, right, right hand, right leg, right side, side
      south, starboard, top, under, underneath, upper, upstairs, west
    `),
  },
  {
    why: "where gear is kept or used",
    words: list(`
      aboard, aft, area, bank, barge, barn, base, basement, basin, bay, bays, bench, berth, board, boat, boathouse, boatyard, boom
      bow thruster room, box, bridge, building, bulkhead, bunker, cabin, cabinet, camp, car park, catwalk, cellar, chamber, cleats
      compound, compressor house, container, control room, corner, cradle, crane, cranes, cupboard, dam, davit, daylight, deck, depot
      derrick, desk, dock, dockside, door, drawer, drum store, dry dock, dry place, engine room, entrance, excavator, factory, farm
      ferry, field, floor, forecastle, foredeck, forge, forklift, foundry, gantry, garage, gate, good light, grid, hall, hangar, hanger
      hangers, harbor, harbour, hatch, hoist, hoists, home, hook rail, hull, hut, in the dry, indoors, island, jetty, jib, job site
      kiosk, laboratory, ladder rack, landing, launch, lean to, level, line, loading bay, locker, lockers, lorry, machine shop
      main hall, main store, marina, mast, mezzanine, mill, mine, mobile crane, moorings, office, offshore, on board, onboard, outdoors
      overhead crane, paint shop, paint store, pallet, peg, pegs, pier, pigeonhole, pit head, place, places, plant, plate shop, platform
      plot, pontoon, port side, press shop, pump house, quarry, quay, quay shed, quayside, rack, racks, rail, rail yard, railway, rig
      rigging loft, rigging shop, rigging store, river, roof, room, row, sail loft, section, shaft, shed, shelf, shelves, ship, shipyard
      shop, shop floor, site, skid, slipway, sorting, sorting bench, spares box, spares rack, spool, stable, stack, stage, stand
      station, steps, stillage, stock, stockroom, storage, store, storeroom, stores, substation, substructure, superstructure, tank farm
      terminal, tool room, tool store, toolbox, tower, tower crane, trailer, trestle, trolley, truck, tug, tunnel, turbine hall
      under cover, unit, utility, van, vault, vehicle, vessel, wall, warehouse, waterfront, weighbridge, well head, wharf, winch, wing
      workboat, works yard, workshop, yacht, yard, zone
    `),
  },
  {
    why: "who has it, looked at it or asked for it",
    words: list(`
      agent, apprentice, assistant, banksman, boss, bosun, carpenter, charge hand, chargehand, clerk, client, colleague, company
      competent person, contractor, contractors, crane driver, crane hire, crew, customer, day shift, deck crew, department, dept
      deputy, divers, driver, early shift, electricians, engineer, erectors, examiner, fitter, fitters, foreman, gang, group, hand
      hire company, hirer, inspector, inspectors, insurance, insurer, joiner, keeper, lads, late shift, lead hand, leading hand
      machinist, maintenance, maker, makers, management, manager, mate, mechanic, men, myself, night shift, operator, operators, owner
      owners, painter, people, person, rigger, riggers, safety officer, scaffolders, section leader, shift, shipwright, skipper, slinger
      slingers, staff, storekeeper, storeman, stores clerk, subcontractor, supervisor, supplier, surveyor, team, technician, toolkeeper
      trainee, trainees, vendor, visitor, visitors, worker, workers, yard crew
    `),
  },
  {
    why: "when it was, or how often",
    words: list(`
      after cleaning, after each use, after every use, after greasing, after hire, after inspection, after lunch, after painting
      after test, after the job, after the move, after the season, after the test, after use, after washing, afternoon, am, annual
      annually, apr, april, aug, august, autumn, before inspection, before lift, before lunch, before test, before the season, biannual, christmas
      daily, date, dates, day, days, dec, december, during, earlier today, easter, end of month, every month, fall season, feb, february
      for age, for its age, fortnight, fri, friday, hour, hours, jan, january, jul, july, jun, june, last autumn, last check
      last inspection, last month, last quarter, last round, last season, last spring, last summer, last time, last visit, last week
      last winter, last year, lately, later, mar, march, may, minutes, mon, monday, month
      monthly, months, morning, next inspection, next month, next round, next time, next visit, next week, next year, night
      not used for a while, not used lately, not used much, not used since, not used this month, not used this quarter
      not used this season, not used this year, not used yet, nov, november, now, nowadays, oct, october, often, period, periodic, pm
      previous inspection, previously, quarter, quarterly, rarely, rarely used, recent, recently, regularly, round, sat, saturday
      season, seasonal, seldom, seldom used, sep, sept, september, shutdown, six monthly, sometimes, spring round, spring tide, summer
      sun, sunday, the move, this time, this year, thu, thurs, thursday, time, times, today, tomorrow, tonight, tue, tues, tuesday
      turnaround, twice, until april, until august, until december, until february, until friday, until january, until july, until june
      until march, until may, until monday, until next week, until november, until october, until saturday, until september
      until spring, until summer, until sunday, until the refit, until the weekend, until thursday, until tuesday, until wednesday
      until winter, wed, wednesday, week, weekend, weekly, weeks, winter, year, yearly, years, yesterday
    `),
  },
  {
    why: "it was cleaned, greased, painted or marked",
    words: list(`
      anodised, anti corrosion spray, brushed, brushed down, clean, cleaned, cleaned off, cleaned up, cleaning, cleaning done, coated
      degreased, dried, dried off, dried out, dry, dusted, engraved, fresh paint, fresh water, fresh water rinse, freshly, galvanised
      galvanized, grease, greased, greasing, hosed, hosed down, lacquered, lube, lubed, lubricant, lubricated, lubrication, new coat
      new paint, newly, nice and clean, oil, oiled, oiled up, oiling, paint, painted, painting, plated, pressure washed, primed, primer
      re greased, re lubricated, re oiled, re painted, re stencilled, recently painted, regreased, relubricated, reoiled, repainted
      rinsed, rinsed off, rust inhibitor, rustproofed, soap, sprayed, steam cleaned, stencilled, vacuumed, varnished, washed
      washed down, water, waxed, wd40, wiped, wiped clean, wiped down, wiped off, wire brushed, zinc plated
    `),
  },
  {
    why: "it was looked at, measured, weighed or written down",
    words: list(`
      added, archived, booked, calibrated, caliper, calliper, cert, certificate, certificates, certification, certified, certs, checked
      checked ok, client present, colour coded, confirmed, copied, counted, document, documents, done, dye pen done, engineer present
      entered, examination, examined, filed, full inspection, function test, function tested, gauge, gauged, in date, in good light
      inspected, inspection, inspection done, inspections, inspector present, issued, lens, listed, load test done, load test passed
      load tested, log book, logbook, logged, logged in, looked at, looked at again, looked over, magnifier, marked, matches cert, matches certificate, measured
      measurement, measurements, micrometer, mirror, mpi done, mt done, ndt done, new cert, no change, no changes, noted, numbered
      on file, owner present, paperwork, passed, photo, photo taken, photographed, photos, picture, pictures, proof loaded
      proof test done, proof tested, pt done, put on list, put on the list, re checked, re inspected, re measured, re numbered
      re registered, rechecked, record, recorded, records, register, registered, reinspected, remeasured, renumbered, report, reports
      routine, routine check, ruler, scanned, see cert, see cert no, see certificate, see certificate no, see drawing, see inventory
      see log book, see manual, see register, see the log book, signed, signed for, signed off, signed out, sticker, stickers, survey
      surveyed, surveyor present, taken, tape, tape measure, test, tested, tested ok, thorough, thorough examination, tool, torch
      torque wrench, torqued, under lamp, updated, uploaded, verified, vernier, viewed, visual, visual check, visual only inspection
      weighed, with gauge, with lamp, with lens, with magnifier, with mirror, with torch, witnessed, witnessed by
    `),
  },
  {
    why: "it was moved, stored, lent or used as gear is",
    words: list(`
      all year, allocated, allocated to, assigned, at home, available, back from, back from hire, back in service, back in stock
      back in store, back in use, back on, back up, backup, belongs, booked in, booked out, borrowed, bought, came back from hire
      came from, came with, carried, coiled, collected, comes with, covered, daily service, daily use, dedicated, delivered, deployed, due back
      emergency spare, extra, fitted, general purpose, general use, goes with, good storage, handed, handed over, heavy duty
      held in stock, hire, hired, hired in, hired out, hung, hung up, in regular use, in service, in stock, in store, in use, installed
      interchangeable, job, jobs, kept, kit, lent, light duty, light loads, light use, little use, little used, loan, loaned, located
      low use, lying, mounted, moved, moved from, moved to, never used, newly bought, normal service, normal use, occasional use
      on hire, on job, on loan, on site, on standby, on the crane, on the job, out on hire, out on loan, packed, part of, picked up
      placed, pool, project, purchased, put away, put back, put in, put into service, put into use, put up, racked, re stocked, ready
      ready for issue, ready for use, reallocated, reassigned, received, regular use, relocated, reserve, reserved, restocked, retained
      returned, returned to service, returned to stock, returned to store, returned to stores, rigged, rolled up, sent to site, service
      serviced, set, set aside for the crane, shared, sheltered, sits, spare, spares, stacked, stand by, standby, stock item, stored
      stowed, strapped, supplied, take in, taken to, tidied, tidied up, tidy, tied up neatly, transferred, transported, travels
      unpacked, unused, use, used, used daily, used for, used in, used occasionally, used on, used once, used with, weekly use, wrapped
    `),
  },
  {
    why: "office and papers",
    words: list(`
      account, address, asset, audit, book, budget, card, checklist, contact, contract, copy, costs, delivery, delivery note, entry
      file, files, folder, form, index, inventory, invoice, job no, job number, journal, label, labels, list, lists, log, mail, manual
      note, notes, on order no, online, order no, order number, owner's, page, paper, papers, plan, po, price, purchase order, quote
      receipt, requisition, scheme, sheet, spreadsheet, stock take, stocktake, system, title, transfer note, work order
    `),
  },
  {
    why: "which one of several, and how many",
    words: list(`
      another, aux, auxiliary, double, eight, extra, first, five, four, fourth, half set, individual, latest, main, new, newest, nine
      odd, old, oldest, one, one of, only one of its kind, only one on site, others, own, pairs, personal, primary, private, second
      secondary, seven, shared, six, special, ten, third, three, triple, twelve, twin, two, used as spare, whole set
    `),
  },
  {
    why: "how it is done, when it is done well",
    words: list(`
      as always, as before, as expected, as found, as last time, as last year, as new, as per, as planned, as required, as shown
      as usual, as was, by hand, carefully, closes, closes fully, closes well, correctly, easily, easy, evenly, exactly, freely, fully
      generally, gently, happy, happy with, just, just as, lays flat, lays straight, lightly oiled, like, like its, like new, looks
      mainly, mostly, moves, moves freely, neatly, nicely, normally, opens and closes, operates, properly, quickly, rotates
      rotates freely, runs, runs smoothly, runs true, seats, seats fully, smooth, smoothly, snaps shut, snug, spins, spins freely, still
      still good, still ok, straight, swings, turns, turns by hand, turns freely, usually, very, well
    `),
  },
  {
    why: "weather and the work of the day, which gear is made for",
    words: list(`
      concreting, construction, diving, dredging, erection, excavation, fabrication, lift, lifted with, lifting, lifts, loading
      maintenance, mooring, piling, production, refit, sailing, salvage, steelwork, towing gear, training, training use, unloading, work
      works
    `),
  },
];
export const PARTS: Group = {
  why: "gear and its parts, by their names alone",
  words: list(`
    accessories, adapter, alloy, anchor, assembly, bail, ball, bar, barrel, basket hitch, beam, bearing, bearings, becket, bench book
    block, blocks, body, bolt, bolts, bow, bowl, bracket, brake, bridle, bucket, bush, bushing, cable, cage nut, cam, casing, chain
    chain block, chains, cheek, cheek plate, cheek plates, cheeks, chest, choker hitch, circlip, clamp, clamps, clevis, clip, clips
    collar, component, components, connector, construction, core, cotter, cotter pin, cotter pins, cotters, coupling, cover, crown
    cylinder, dee, drum, ear, ears, end, end fitting, end fittings, ends, eye, eyebolt, eyebolts, eyelet, eyes, face, fall, ferrule
    ferrules, fibre, fitting, fittings, flange, flanges, forging, frame, gear, gland, grab, grip, grommet, groove, guard, handle
    hardware, head, hinge, hook, hook block, hooks, housing, hub, insert, jaw, jaws, joint, joints, keeper, keepers, key, latch, latches
    leg, legs, lever, lifting gear, link, links, load, load block, load chain, loads, lock, lock nut, locknut, loop, loops, lug, lugs
    magnet, master link, material, mesh, metal, motor, mousing, mouth, neck, needle, nut, nuts, nylon, oblong link, pad, pads, part
    parts, pear link, pendant, piece, pin, pins, pipe, plate, plates, point, polyester, pulley, ring, rings, rivet, rivets, rod, roller
    rollers, rope, ropes, roundsling, saddle, safety catch, safety latch, safety pin, seal, seals, seat, set screw, shackle, shackles
    shank, sheave, sheaves, shell, shoulder, shroud, side plate, side plates, sleeve, sleeves, sling, slings, snap, socket, span
    spindle, spine, splice, splices, spline, split pin, split pins, spreader, spring, springs, stainless, stem, stitching, stop, strand
    strap, straps, strop, strops, stud, surface, swage, swages, swivel, swivels, tackle, tag line, tail, tang, teeth, thimble
    thimble eye, thimbles, thread, threads, throat, tip, tongue, tooth, tube, turnbuckle, washer, washers, web, webbing, wedge, wheel
    wheels, wire mesh, wire rope, wire rope sling, yoke
  `),
};
export const NAMED_BY: Group = {
  why: "what a part is called or told by: numbers, sizes and names by design",
  words: list(`
    batch, black band, black code, black colour, black colour code, black label, black mark, black paint, black quarter, black ribbon
    black sticker, black tag, black tape, black tie, block no, blue band, blue code, blue colour, blue colour code, blue label
    blue mark, blue paint, blue quarter, blue ribbon, blue sticker, blue tag, blue tape, blue tie, brand, brown band, brown code
    brown colour, brown colour code, brown label, brown mark, brown paint, brown quarter, brown ribbon, brown sticker, brown tag
    brown tape, brown tie, capacity, catalogue, class, code, code black, code blue, code brown, code green, code grey, code orange
    code pink, code purple, code red, code silver, code white, code yellow, coded, color, colour, colour band, colour code
    colour code black, colour code blue, colour code brown, colour code green, colour code grey, colour code orange, colour code pink
    colour code purple, colour code red, colour code silver, colour code white, colour code yellow, design, dia, diameter, drawing
    duplicate, feet, foot, four leg, ft, galv, grade, green, green band, green code, green colour, green colour code, green label
    green mark, green paint, green quarter, green ribbon, green sticker, green tag, green tape, green tie, grey band, grey code
    grey colour, grey colour code, grey label, grey mark, grey paint, grey quarter, grey ribbon, grey sticker, grey tag, grey tape
    grey tie, heat number, id, ident, identical, identification, item, items, kg, kgs, kn, lb, lbs, length, letter, long, lot, m, make
    marked black, marked blue, marked brown, marked green, marked grey, marked orange, marked pink, marked purple, marked red
    marked silver, marked white, marked yellow, marking, markings, matching, meter, meters, metre, metres, model, name, names, new label
    new sticker, new tag, new tag fitted, new tag on, new tags, no name, nominal, number, numbers, of new, orange, orange band
    orange code, orange colour, orange colour code, orange label, orange mark, orange paint, orange quarter, orange ribbon
    orange sticker, orange tag, orange tape, orange tie, original, other, painted black, painted blue, painted brown, painted green
    painted grey, painted orange, painted pink, painted purple, painted red, painted silver, painted white, painted yellow, pair
    part number, pattern, pink band, pink code, pink colour, pink colour code, pink label, pink mark, pink paint, pink quarter
    pink ribbon, pink sticker, pink tag, pink tape, pink tie, product, purple, purple band, purple code, purple colour
    purple colour code, purple label, purple mark, purple paint, purple quarter, purple ribbon, purple sticker, purple tag, purple tape
    purple tie, rated, rating, red band, red code, red colour, red colour code, red label, red mark, red paint, red quarter, red ribbon
    red sticker, red tape, red tie, ref, reference, repainted black, repainted blue, repainted brown, repainted green, repainted grey
    repainted orange, repainted pink, repainted purple, repainted red, repainted silver, repainted white, repainted yellow, rev
    safe working load, selfcolour, serial, serial number, series, silver band, silver code, silver colour, silver colour code
    silver label, silver mark, silver paint, silver quarter, silver ribbon, silver sticker, silver tag, silver tape, silver tie
    single leg, size, sized, sizes, spec, specification, stainless steel, stamp, stamped, standard, steel, swl, t, tag, tag no
    tag number, tagged black, tagged blue, tagged brown, tagged green, tagged grey, tagged orange, tagged pink, tagged purple
    tagged red, tagged silver, tagged white, tagged yellow, tags, three leg, ton, tonne, tonnes, tons, two leg, type, typed, version
    weight, white band, white code, white colour, white colour code, white label, white mark, white paint, white quarter, white ribbon
    white sticker, white tag, white tape, white tie, wide, wll, working load limit, yellow, yellow band, yellow code, yellow colour
    yellow colour code, yellow label, yellow mark, yellow paint, yellow quarter, yellow ribbon, yellow sticker, yellow tag, yellow tape
    yellow tie
  `),
};
export const DESIGNED: Group = {
  why: "behind a size it says that the size is one by design: 13 mm chain",
  words: list(`
    bolt, bow, caliper, calliper, chain, dee, dia, diameter, eyebolt, gauge, hook, link chain, long, master link, pin, ring, rope
    shackle, shackles, size, sling, swivel, webbing, wide, wire rope
  `),
};
/** What a denial may take back without saying anything of the gear. */
export const NO_NEWS: Group = {
  why: "no remarks, nothing further: there is nothing to tell",
  words: list(`
    action, actions, adverse, alteration, alterations, anomalies, change, changes, comment, comments, concern, concerns, difference
    findings, follow up, further, further action, further comment, further comments, further remarks, history, longer on hire
    new findings, news, note, notes, observation, observations, other comments, other remarks, remark, remarks, repair, repairs
    special remarks, to add, to note, to report, work, work needed, work required
  `),
};
