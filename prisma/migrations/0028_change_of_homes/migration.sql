-- Into the log: who is invited, where a child is to wake, what came back, the handover note. Both homes hear of the last three.
create trigger record_change after insert or update on invitation for each row execute function record_change('INVITATION', 'HOUSEHOLD', 'id', '', 'token_digest');
create trigger record_change after insert or update on residence_pattern for each row execute function record_change('RESIDENCE', 'CHILD', 'child_id', 'starts', '*');
create trigger record_change after insert or update on residence_exception for each row execute function record_change('RESIDENCE', 'CHILD', 'child_id', 'date', '*');
create trigger record_change after insert or update on box_return for each row execute function record_change('CAME_BACK', 'CHILD', 'child_id', 'date', '*');
create trigger record_change after insert or update on handover for each row execute function record_change('HANDOVER', 'CHILD', 'child_id', 'week_start', '*');
