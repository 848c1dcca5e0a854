/** Headings that say nothing of an item's condition. */
import { type Group, list } from "../../reading/words/group";

/** What says nothing of an item's condition: each entry is a set of words that must all stand in the heading. */
export const ASIDE: readonly Group[] = [
  {
    why: "a paper, and where it is kept",
    words: list(`
      approval, approvals, attachment, book, ce, cert, certificate, certification, coc, conformity, datasheet, declaration, doc, docs
      document, documents, drawing, drg, dwg, evidence file, file, folder, hyperlink, image, link url, log book, logbook, manual, page
      papers, passport, photo, photograph, photos, picture, procedure, register page, report, scan, scheme, sheet, url, video
    `),
  },
  {
    why: "a number of the office, not of the item's state",
    words: list(`
      account, asset value, bar code, barcode, batch, budget, cast, charge, checklist, contract, control number, cost centre|center|code
      department, dept, erp, heat number, index, invoice, job, ledger, line, lot, nfc, nsn, order, po, position, project, purchase, qr
      qr code, quotation, requisition, rev, revision, rfid, row, sap, seq, sequence, sort, stock code|number, ticket, tracking, uid
      version, wbs, work order, workorder
    `),
  },
  {
    why: "what it cost and is worth",
    words: list(`
      amount, book value, cost, currency, depreciation, hire, insurance, lease, price, rate, rental, replacement cost|price|value, value
      value new, warranty
    `),
  },
  {
    why: "who made, sold or supplied it, and as what",
    words: list(`
      article, brand, catalogue number, dealer, design, finish, grade, make, maker, makers name, manuf, manufacturer, manufacturers name
      material, mfg, mfr, model, norm, part number, pattern, pn, product, range, series, sku, specification, standard, style, supplier
      trade name, vendor
    `),
  },
  {
    why: "who has it or asked for it; a person's name is no finding",
    words: list(`
      allocated to, approved by, approver, assigned to|by, borrower, buyer, client, contact, contractor, crew, custodian, customer
      email, engineer, foreman, holder, issued, issued by|to, keeper name, manager, officer, operator, owner, phone, planner
      project manager, recorded by, responsible, reviewed by, rigger, shift, signature, signed, signed by, supervisor, team, telephone
      used by, user, user name, verified by, witness
    `),
  },
  {
    why: "where it stands or hangs",
    words: list(`
      aisle, basement, bench, berth, bin, block store, box, building, cabinet, container, crane, deck, dock, drawer, floor, hall, hangar
      hanger, level, locker, machine, mine, peg, pier, pit, plant, platform, quay, rack, rack|row|shelf|bin number, region, rig, room
      section store, shelf, ship, store rack, substation, tool room|crib, truck, vehicle, vessel, workshop, yard, zone
    `),
  },
  {
    why: "another day than that of the inspection",
    words: list(`
      acquired, age, bought, built, calibrated, calibration, checked out, commissioned, delivered, delivery, due, entry date, expires
      expiry, first use|used, inservice date|since|from, installation, installed, introduced, issue date, issued, life, load test date
      loaned, made, manufacture, manufactured, month, next, next due, next exam|examination|inspection, ordered, overdue, print date
      printed, proof load date, proof test date, purchased, received, repair date, repaired on, replaced on, replacement date
      return date, returned, service date|since|from|entered|life, sold, start date, test date, updated, week, year
    `),
  },
  {
    why: "what it is by design, which wear does not change",
    words: list(`
      angle sling|load|rating, breaking force|load|strength, capacity basket|choker|vertical, coating thickness, colour, colour code
      colour code|band round|inspection|quarter|month, configuration, design factor, dimensions, effective length, eye length, factor
      family, height, hitch, leg length, length, length overall, lift height, load class, mass, mbl, mbs, overall length, paint
      paint thickness, pin length, plies, ply, proof load, quantity, ratio, reach, safety factor, sf, strand count, strength
      swl|wll angle, temperature limit|range|rating, tensile, test load, thread size|type, ultimate load|strength, weight
      wll basket|choker|vertical, working length
    `),
  },
  {
    why: "how and with what it was looked at, not what was seen",
    words: list(`
      calliper|caliper number|id, checklist, duration, equipment number, equipment used, gauge number|id|serial, hours
      inspection method|number|procedure|reason|stage, inspection type, instrument, method, standard used, technique, temperature
      test method|equipment|procedure, time, tool used, weather
    `),
  },
];
/** Words that may stand beside an entry of what is not about condition. */
export const BESIDE_ASIDE: Group = {
  why: "it tells one number, name or day of an office from another",
  words: list(`
    approval, asnew, asset, aud, bought, by, cad, center, centre, chf, code, company, current, date, day, equipment, eur, from, gbp
    gear, id, in, inservice, inspection, inspector, internal, item, kg, kgs, lb, lbs, month, name, new, no, nzd, order, original, part
    purchase, ref, reference, sap, serial, service, since, sling, tag, test, time, total, type, unit, until, usd, valid, work, year
    years
  `),
};
