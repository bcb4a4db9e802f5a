-- The shop itself, the people who may sign in, and their signed-in state.

create table shop (
    id                 integer                  not null,
    name               varchar(80)              not null,
    currency           varchar(3)               not null,
    minor_digits       integer                  not null,
    costing_method     varchar(10)              not null,
    hourly_rate_minor  bigint                   not null,
    tax_table          varchar(40)              not null,
    first_day          date                     not null,
    time_zone          varchar(60)              not null,
    created_at         timestamp with time zone not null,
    version            bigint                   not null,
    constraint shop_pk primary key (id),
    -- One database holds one shop.
    constraint shop_only_one check (id = 1),
    constraint shop_minor_digits_known check (minor_digits between 0 and 4),
    constraint shop_costing_method_known check (costing_method in ('FIFO', 'AVERAGE')),
    constraint shop_hourly_rate_not_negative check (hourly_rate_minor >= 0)
);

create table person (
    id             uuid                     not null,
    name           varchar(60)              not null,
    password_hash  varchar(200)             not null,
    role           varchar(12)              not null,
    created_at     timestamp with time zone not null,
    version        bigint                   not null,
    constraint person_pk primary key (id),
    constraint person_name_once unique (name),
    constraint person_role_known check (role in ('OWNER', 'HELPER', 'ACCOUNTANT'))
);

-- The layout that Spring Session reads; the same script on both databases.
create table spring_session (
    primary_id             char(36) not null,
    session_id             char(36) not null,
    creation_time          bigint   not null,
    last_access_time       bigint   not null,
    max_inactive_interval  integer  not null,
    expiry_time            bigint   not null,
    principal_name         varchar(100),
    constraint spring_session_pk primary key (primary_id),
    constraint spring_session_id_once unique (session_id)
);
create index spring_session_expiry on spring_session (expiry_time);
create index spring_session_principal on spring_session (principal_name);

create table spring_session_attributes (
    session_primary_id  char(36)     not null,
    attribute_name      varchar(200) not null,
    attribute_bytes     bytea        not null,
    constraint spring_session_attributes_pk primary key (session_primary_id, attribute_name),
    constraint spring_session_attributes_of_session foreign key (session_primary_id)
        references spring_session (primary_id) on delete cascade
);
