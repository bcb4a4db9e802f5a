-- A link that lets an accountant read the years and nothing else. Only a hash of its secret part is kept.
create table accountant_link (
    id uuid not null,
    for_whom varchar(60) not null,
    token_hash varchar(64) not null,
    made_at timestamp with time zone not null,
    ends_on date not null,
    ended_at timestamp with time zone,
    last_used_at timestamp with time zone,
    constraint accountant_link_pk primary key (id),
    constraint accountant_link_token_uk unique (token_hash)
);
