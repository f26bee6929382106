-- Into the log: who is on, when a carer can help, and that a carer has another name. The name itself is read, never kept.
create trigger record_change after insert or delete on duty for each row execute function record_change('ROTA', 'HOUSEHOLD', 'HOUSEHOLD', '', '');
create trigger record_change after insert or update or delete on availability for each row execute function record_change('AVAILABILITY', 'HOUSEHOLD', 'HOUSEHOLD', '', '');

create function record_name() returns trigger language plpgsql security definer set search_path = '' as $$
begin
  if new.display_name is distinct from old.display_name and coalesce(current_setting('app.erasing', true), '') <> 'on' then
    perform public.app_record_change(array(select m.household_id from public.membership m where m.person_id = new.id order by 1),
      'CARER', 'CHANGED', new.id, null, null, '{}', '{}');
  end if;
  return null;
end
$$;
revoke execute on function record_name() from public;
create trigger record_change after update on person for each row execute function record_name();

-- For forgetting who did it.
create index change_person_idx on change (person_id) where person_id is not null;
