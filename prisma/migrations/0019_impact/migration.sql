-- What a rule set would do to agreed weeks, as numbers. The administrator's own rights reach no family's row: this function reads
-- them as the owner, only for schools the person administers, and lets out nothing but counts, of which none is below five.

-- Only inside that function, and only for the owner it runs as; the server's role is another and gains nothing by the setting.
create function app_counting() returns boolean
language sql stable set search_path = ''
return coalesce(current_setting('app.counting', true), '') = 'on';
revoke execute on function app_counting() from public;

create policy lunch_box_count on lunch_box for select to current_user using (app_counting());
create policy box_item_count on box_item for select to current_user using (app_counting());
create policy week_plan_count on week_plan for select to current_user using (app_counting());
create policy enrolment_count on enrolment for select to current_user using (app_counting());
create policy child_count on child for select to current_user using (app_counting());
create policy exemption_count on exemption for select to current_user using (app_counting());

/*
  rules: [{no, rule, span, measure, sum, second, least, most, mean, counts, full_days, short, split, breaks, weekdays, from_years,
    under_years, first_day, last_day, key}], addends as columns of equal length. A row per rule, of which several bounds may have the same number, and one, with null, for all of
  them together: boxes of agreed weeks it holds for, and of them the boxes, children and weeks that would break it. A limit over a
  week that is broken counts all boxes of that child's week. not_counted: boxes with a dish that no addend knows, a family's own.
*/
create function app_count_rules(of_schools uuid[], of_class uuid, from_day date, until_day date, rule_set uuid, rules jsonb,
  sums int[], dishes text[], slots text[], fixed float8[], per_gram float8[], steps float8[], times float8[], kinds text[], known_dishes text[])
returns table (rule int, held int, boxes int, children int, weeks int, not_counted int)
language plpgsql volatile security definer set search_path = ''
-- Nothing is known of how many rows each step has, and a loop inside a loop over them is what must not be tried.
set enable_nestloop = off set jit = off set work_mem = '128MB'
as $$
#variable_conflict use_column
begin
  if exists (select from unnest(of_schools) s(id) where s.id not in (select public.app_appointed_school_ids())) then
    raise exception 'not a school that this person administers' using errcode = '42501';
  end if;
  perform set_config('app.counting', 'on', true);
  return query
  with r as materialized (
    select * from jsonb_to_recordset(rules) as r(no int, rule int, span text, measure text, sum int, second int, least float8, most float8, mean boolean,
      counts boolean, full_days int, short text, split text, breaks text[], weekdays int[], from_years int, under_years int,
      first_day date, last_day date, key text)),
  h as materialized (
    select u.sum, u.dish, u.slot, u.fixed, u.per_gram, u.step, u.times, u.kind
    from unnest(sums, dishes, slots, fixed, per_gram, steps, times, kinds) u(sum, dish, slot, fixed, per_gram, step, times, kind)),
  -- Six days on either side tell whether a week lies across the first or the last day.
  b as materialized (
    select l.id, l.week_plan_id, l.child_id, l.date, extract(isodow from l.date)::int as dow,
      extract(year from age(l.date, c.date_of_birth))::int as years, e.school_id, e.school_class_id
    from public.lunch_box l join public.week_plan p on p.id = l.week_plan_id and p.state = 'AGREED'::public.plan_state
    join public.child c on c.id = l.child_id
    join public.enrolment e on e.child_id = l.child_id and e.from_date <= l.date and (e.until_date is null or e.until_date >= l.date)
    where l.current and l.date between from_day - 6 and until_day + 6 and l.state <> 'EATEN'::public.box_state
      and e.school_id = any (of_schools) and (of_class is null or e.school_class_id = of_class)),
  -- Breaks a class has that day: an early finish drops those that begin at or after it.
  break_days as materialized (
    select d.school_class_id, d.date, k.key from (select distinct school_id, school_class_id, date from b) d
    join public.class_break k on k.school_class_id = d.school_class_id
    where not exists (select from public.school_day x where x.school_id = d.school_id and x.date = d.date
      and (x.school_class_id is null or x.school_class_id = d.school_class_id) and x.ends_at <= k.starts_at)),
  i as materialized (
    select b.id as box, i.id as item, i.break_key, i.slot, i.dish_key, i.grams, i.holding_case
    from b join public.box_item i on i.lunch_box_id = b.id where b.date between from_day and until_day),
  unknown as materialized (select distinct i.box from i where i.dish_key <> all (known_dishes)),
  -- The boxes each rule holds for.
  held as materialized (
    select r.no, r.rule, b.id as box, b.week_plan_id, b.child_id,
      count(*) over (partition by r.no, b.week_plan_id, b.child_id) as days
    from r join b on b.date between greatest(r.first_day, from_day) and least(r.last_day, until_day) and b.years >= r.from_years and b.years < r.under_years
      and (r.weekdays is null or b.dow = any (r.weekdays))
    where b.id not in (select box from unknown)
      and (r.breaks is null or exists (
        select from break_days k where k.school_class_id = b.school_class_id and k.date = b.date and k.key = any (r.breaks)))
      and not exists (
      select from public.exemption x where x.child_id = b.child_id and x.rule_set_id = rule_set and x.rule_key = r.key
        and b.date between x.from_date and x.until_date)),
  -- Weeks in which the rule begins or ends.
  split_weeks as materialized (
    select distinct r.no, b.week_plan_id, b.child_id
    from r join b on (r.weekdays is null or b.dow = any (r.weekdays)) and not b.date between r.first_day and r.last_day
    where r.span = 'WEEK'),
  -- What every item adds, where the rule holds for its box and speaks of its break.
  addends as materialized (
    select r.no, r.breaks, h.* from r join h on h.sum = r.sum
    union all select r.no, r.breaks, h.* from r join h on h.sum = r.second where r.second <> r.sum),
  added as materialized (
    select h.no, i.box, i.item, h.sum, h.kind,
      h.fixed + h.times * case when h.step > 0 then floor(h.per_gram * i.grams / h.step + 1e-9) * h.step else h.per_gram * i.grams end as value
    from i join addends h on h.dish = i.dish_key and h.slot = i.slot where h.breaks is null or i.break_key = any (h.breaks)
    union all
    select r.no, i.box, i.item, r.sum, null, 1 from i, r
    where r.measure = 'REHEATED' and i.holding_case = 'REHEATED_AT_SCHOOL' and (r.breaks is null or i.break_key = any (r.breaks))),
  box_values as materialized (
    select r.no, a.box,
      case r.measure
        when 'KINDS' then count(distinct a.kind)::float8
        when 'TOGETHER' then (bool_or(a.sum = r.sum) and bool_or(a.sum = r.second))::int::float8
        when 'DAYS' then 1::float8
        else sum(a.value) end as value
    from added a join r on r.no = a.no where r.span <> 'ITEM' group by r.no, r.measure, r.sum, r.second, a.box),
  broken_items as (
    select distinct h.no, h.box from (select a.no, a.box, a.item, sum(a.value) as value from added a group by 1, 2, 3) a
    join r on r.no = a.no and r.span = 'ITEM' join held h on h.no = a.no and h.box = a.box
    where a.value > r.most + 1e-6 * greatest(1, abs(r.most)) or a.value < r.least - 1e-6 * greatest(1, abs(r.least))),
  broken_boxes as (
    select h.no, h.box from held h join r on r.no = h.no and r.span = 'BOX' left join box_values v on v.no = h.no and v.box = h.box
    where coalesce(v.value, 0) > r.most + 1e-6 * greatest(1, abs(r.most))
       or coalesce(v.value, 0) < r.least - 1e-6 * greatest(1, abs(r.least))),
  week_kinds as materialized (
    select h.no, h.week_plan_id, h.child_id, count(distinct a.kind)::float8 as kinds from held h
    join r on r.no = h.no and r.span = 'WEEK' and r.measure = 'KINDS' join added a on a.no = h.no and a.box = h.box group by 1, 2, 3),
  week_values as materialized (
    select h.no, h.week_plan_id, h.child_id, min(h.days) as days, bool_or(w.no is not null) as is_split,
      case when r.measure = 'KINDS' then coalesce(max(k.kinds), 0) else coalesce(sum(v.value), 0) end as value,
      max(coalesce(v.value, 0)) as most_in_a_box, min(coalesce(v.value, 0)) as least_in_a_box
    from held h join r on r.no = h.no and r.span = 'WEEK'
    left join split_weeks w on w.no = h.no and w.week_plan_id = h.week_plan_id and w.child_id = h.child_id
    left join box_values v on v.no = h.no and v.box = h.box
    left join week_kinds k on k.no = h.no and k.week_plan_id = h.week_plan_id and k.child_id = h.child_id
    group by h.no, h.week_plan_id, h.child_id, r.measure),
  week_limits as (
    -- The whole limit, a share of it for a part of a week, one day's share for every day, or none; of a mean the whole or none.
    select w.*, p.part, r.mean, case when r.mean and p.way <> 'SKIP' then 'WHOLE' else p.way end as way, r.least, r.most, r.counts
    from week_values w join r on r.no = w.no
    cross join lateral (
      select least(1, w.days::float8 / r.full_days) as part,
        case when w.is_split then r.split when w.days < r.full_days then r.short else 'WHOLE' end as way) p),
  week_bounds as (
    select w.no, w.week_plan_id, w.child_id, w.way,
      case when w.mean then w.value / w.days else w.value end as value,
      w.most_in_a_box, w.least_in_a_box,
      case when w.counts then floor(w.least * s.share + 1e-9) else w.least * s.share end as least,
      case when w.counts then ceil(w.most * s.share - 1e-9) else w.most * s.share end as most
    from week_limits w cross join lateral (
      select case w.way when 'PRORATE' then w.part when 'PER_DAY' then w.part / w.days else 1 end as share) s),
  broken_weeks as (
    select w.no, w.week_plan_id, w.child_id from week_bounds w where case w.way
      when 'SKIP' then false
      when 'PER_DAY' then w.most_in_a_box > w.most + 1e-6 * greatest(1, abs(w.most)) or w.least_in_a_box < w.least - 1e-6 * greatest(1, abs(w.least))
      else w.value > w.most + 1e-6 * greatest(1, abs(w.most)) or w.value < w.least - 1e-6 * greatest(1, abs(w.least)) end),
  broken as (
    select * from broken_items union select * from broken_boxes
    union select h.no, h.box from broken_weeks w join held h on h.no = w.no and h.week_plan_id = w.week_plan_id and h.child_id = w.child_id),
  per_rule as (
    select h.rule, count(distinct h.box) as held, count(distinct k.box) as boxes,
      count(distinct h.child_id) filter (where k.box is not null) as children,
      count(distinct (h.week_plan_id, h.child_id)) filter (where k.box is not null) as weeks
    from held h left join broken k on k.no = h.no and k.box = h.box group by h.rule),
  over_all as (
    select count(distinct h.box) as held, count(distinct k.box) as boxes,
      count(distinct h.child_id) filter (where k.box is not null) as children,
      count(distinct (h.week_plan_id, h.child_id)) filter (where k.box is not null) as weeks
    from held h left join broken k on k.no = h.no and k.box = h.box),
  counted as (
    select p.rule, p.held, p.boxes, p.children, p.weeks from per_rule p union all select null, o.held, o.boxes, o.children, o.weeks from over_all o)
  select c.rule,
    case when c.held >= 5 then c.held::int end,
    -- Boxes of fewer than five children are not told either: they would say how often those children broke it.
    case when c.boxes >= 5 and c.children >= 5 then c.boxes::int end,
    case when c.children >= 5 then c.children::int end,
    case when c.weeks >= 5 and c.children >= 5 then c.weeks::int end,
    case when u.boxes >= 5 then u.boxes::int end
  from counted c cross join (select count(*) as boxes from unknown) u order by c.rule nulls first;
  perform set_config('app.counting', '', true);
end
$$;
revoke execute on function app_count_rules(uuid[], uuid, date, date, uuid, jsonb, int[], text[], text[], float8[], float8[], float8[], float8[], text[], text[]) from public;
grant execute on function app_count_rules(uuid[], uuid, date, date, uuid, jsonb, int[], text[], text[], float8[], float8[], float8[], float8[], text[], text[]) to noonpail_app;
